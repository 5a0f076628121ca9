import {
  addScenarioLikeToday,
  deleteScenarios,
  duplicateScenario,
  moveScenariosBy,
} from '../../lib/views/row-gestures.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import { getPlanner } from '../state/planner.ts';
import { usePlanner } from '../state/use-planner.ts';
import { SignButton } from '../ui/sign-button.tsx';
import { KeysButton } from './keys-button.tsx';
import styles from './sheet-toolbar.module.css';

interface Props {
  readonly isWhole: boolean;
  readonly onWhole: (isWhole: boolean) => void;
}

/** Adds, copies, removes and moves rows; each is one step of the history. And shows more columns or fewer. */
export function SheetToolbar({ isWhole, onWhole }: Props) {
  const planner = getPlanner();
  const sheet = usePlanner((state) => state.sheet);
  const currentId = usePlanner((state) => state.currentId);
  const selectedIds = usePlanner((state) => state.selectedIds);
  const { plan } = presentState(sheet);
  const up = moveScenariosBy(plan, [currentId], -1);
  const down = moveScenariosBy(plan, [currentId], 1);
  const isToday = plan.scenarios[0]?.id === currentId;
  return (
    <div className={styles.bar} role="toolbar" aria-label="Rows of the sheet">
      <SignButton sign="plus" label="Add" wordy onPress={() => planner.rowGesture(addScenarioLikeToday(plan))} />
      <SignButton
        sign="copy"
        label="Duplicate"
        keys="Alt+Enter"
        wordy
        onPress={() => planner.rowGesture(duplicateScenario(plan, currentId))}
      />
      <SignButton
        sign="remove"
        label="Delete"
        keys="Alt+Delete"
        wordy
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
      <KeysButton />
      <label className={styles.whole}>
        <input type="checkbox" checked={isWhole} onChange={(event) => onWhole(event.target.checked)} />
        All columns
      </label>
    </div>
  );
}
