import {
  addScenarioLikeToday,
  deleteScenarios,
  duplicateScenario,
  moveScenariosBy,
} from '../../lib/views/row-gestures.ts';
import type { SheetColumn } from '../../lib/views/sheet-columns.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import { getPlanner } from '../state/planner.ts';
import { usePlanner } from '../state/use-planner.ts';
import { ChoiceBar } from '../ui/choice-bar.tsx';
import { SignButton } from '../ui/sign-button.tsx';
import { ColumnsButton } from './columns-button.tsx';
import { KeysButton } from './keys-button.tsx';
import styles from './sheet-toolbar.module.css';

const WAYS_ROUND = [
  { value: 'rows', label: 'As rows' },
  { value: 'columns', label: 'As columns' },
] as const;

/** Adds, copies, removes and moves scenarios; each is one step of the history. */
function RowTools() {
  const planner = getPlanner();
  const sheet = usePlanner((state) => state.sheet);
  const currentId = usePlanner((state) => state.currentId);
  const selectedIds = usePlanner((state) => state.selectedIds);
  const isSorted = usePlanner((state) => state.look.sort !== null);
  const { plan } = presentState(sheet);
  const up = isSorted ? null : moveScenariosBy(plan, [currentId], -1);
  const down = isSorted ? null : moveScenariosBy(plan, [currentId], 1);
  const isToday = plan.scenarios[0]?.id === currentId;
  return (
    <>
      <SignButton
        sign="plus"
        label="Add"
        wordy="roomy"
        onPress={() => planner.rowGesture(addScenarioLikeToday(plan))}
      />
      <SignButton
        sign="copy"
        label="Duplicate"
        keys="Alt+Enter"
        wordy="roomy"
        onPress={() => planner.rowGesture(duplicateScenario(plan, currentId))}
      />
      <SignButton
        sign="remove"
        label="Delete"
        keys="Alt+Delete"
        wordy="roomy"
        disabled={isToday}
        onPress={() => planner.rowGesture(deleteScenarios(plan, selectedIds.length > 0 ? selectedIds : [currentId]))}
      />
      <SignButton
        sign="up"
        label="Move up"
        keys="Alt+ArrowUp"
        disabled={!up}
        onPress={() => (up ? planner.rowGesture(up) : undefined)}
      />
      <SignButton
        sign="down"
        label="Move down"
        keys="Alt+ArrowDown"
        disabled={!down}
        onPress={() => (down ? planner.rowGesture(down) : undefined)}
      />
    </>
  );
}

/** What is done with the sheet's rows, and how the sheet is looked at. */
export function SheetToolbar({ columns }: { readonly columns: readonly SheetColumn[] }) {
  const { setLook } = getPlanner();
  const look = usePlanner((state) => state.look);
  return (
    <div className={styles.bar} role="toolbar" aria-label="Rows and columns of the sheet">
      <RowTools />
      <KeysButton />
      <ChoiceBar
        label="Scenarios"
        options={WAYS_ROUND}
        value={look.isSideways ? 'columns' : 'rows'}
        onChange={(value) => setLook({ ...look, isSideways: value === 'columns' })}
      />
      <ColumnsButton columns={columns} look={look} />
      <label className={styles.whole}>
        <input
          type="checkbox"
          checked={look.isWhole}
          onChange={(event) => setLook({ ...look, isWhole: event.target.checked })}
        />
        All columns
      </label>
    </div>
  );
}
