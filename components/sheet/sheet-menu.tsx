import { useEffect, useRef } from 'react';
import { isVisible, movedColumn, withColumn } from '../../lib/views/arrange-columns.ts';
import { deleteScenarios, duplicateScenario, insertScenarioBelow } from '../../lib/views/row-gestures.ts';
import type { SheetColumn } from '../../lib/views/sheet-columns.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import { type ColumnSort, type SheetLook, withFilter } from '../../lib/views/sheet-look.ts';
import { getPlanner } from '../state/planner.ts';
import { usePlanner } from '../state/use-planner.ts';
import { FilterForm } from './filter-form.tsx';
import type { NamedCell } from './named-cell.ts';
import styles from './sheet-menu.module.css';
import type { SheetMenuTarget } from './sheet-menu-target.ts';

interface Props {
  readonly target: SheetMenuTarget;
  readonly columns: readonly SheetColumn[];
  readonly onNote: (cell: NamedCell) => void;
  readonly onClose: () => void;
}

interface ItemProps {
  readonly words: string;
  readonly onPress: (() => void) | null;
  readonly isOn?: boolean;
}

function Item({ words, onPress, isOn }: ItemProps) {
  return (
    <button type="button" disabled={!onPress} aria-pressed={isOn} onClick={onPress ?? undefined}>
      {words}
    </button>
  );
}

interface ColumnPartProps {
  readonly column: SheetColumn;
  readonly columns: readonly SheetColumn[];
  readonly look: SheetLook;
  readonly onLook: (look: SheetLook) => void;
}

function ColumnPart({ column, columns, look, onLook }: ColumnPartProps) {
  const sorted = look.sort?.columnId === column.id ? look.sort.way : null;
  const sortTo = (way: ColumnSort['way']) =>
    onLook({ ...look, sort: sorted === way ? null : { columnId: column.id, way } });
  const [before, after] = [movedColumn(columns, look, column.id, -1), movedColumn(columns, look, column.id, 1)];
  const canHide = column.id !== 'name' && isVisible(column, look);
  return (
    <div className={styles.part}>
      <h3>{column.label}</h3>
      <Item words="Sort, smallest first" isOn={sorted === 'rising'} onPress={() => sortTo('rising')} />
      <Item words="Sort, largest first" isOn={sorted === 'falling'} onPress={() => sortTo('falling')} />
      <FilterForm
        label={column.label}
        filter={look.filters[column.id] ?? ''}
        onFilter={(filter) => onLook(withFilter(look, column.id, filter))}
      />
      <Item words="Move the column back" onPress={before && (() => onLook(before))} />
      <Item words="Move the column on" onPress={after && (() => onLook(after))} />
      <Item words="Hide the column" onPress={canHide ? () => onLook(withColumn(look, column, false)) : null} />
    </div>
  );
}

interface CellPartProps {
  readonly cell: NamedCell;
  readonly onNote: (cell: NamedCell) => void;
  readonly onDone: () => void;
}

function CellPart({ cell, onNote, onDone }: CellPartProps) {
  const planner = getPlanner();
  const { plan } = presentState(planner.getState().sheet);
  const id = cell.scenarioId;
  const name = plan.scenarios.find((scenario) => scenario.id === id)?.name ?? '';
  const isToday = plan.scenarios[0]?.id === id;
  const press = (work: () => void) => () => {
    onDone();
    work();
  };
  return (
    <div className={styles.part}>
      <h3>{name}</h3>
      <Item words="Note on this cell …" onPress={press(() => onNote(cell))} />
      <Item words="Insert a scenario below" onPress={press(() => planner.rowGesture(insertScenarioBelow(plan, id)))} />
      <Item words="Duplicate" onPress={press(() => planner.rowGesture(duplicateScenario(plan, id)))} />
      <Item words="Delete" onPress={isToday ? null : press(() => planner.rowGesture(deleteScenarios(plan, [id])))} />
    </div>
  );
}

/** What can be done with a column, and with a cell and its scenario. It closes when something is chosen or Escape is pressed. */
export function SheetMenu({ target, columns, onNote, onClose }: Props) {
  const ref = useRef<HTMLDivElement>(null);
  const look = usePlanner((state) => state.look);
  const column = columns.find((candidate) => candidate.id === target.columnId);
  useEffect(() => {
    const menu = ref.current;
    menu?.showPopover();
    menu?.querySelector<HTMLElement>('button:not(:disabled)')?.focus();
  }, []);
  const { x, y } = target;
  const close = () => ref.current?.hidePopover();
  return (
    <div
      ref={ref}
      popover="auto"
      role="dialog"
      aria-label={column ? `Menu of ${column.label}` : 'Menu'}
      className={styles.menu}
      style={{ left: `min(${x}px, 100vw - 17rem)`, top: `max(0.5rem, min(${y}px, 100dvh - 30rem))` }}
      onToggle={(event) => {
        if (event.newState === 'closed') onClose();
      }}
    >
      {target.cell ? <CellPart cell={target.cell} onNote={onNote} onDone={close} /> : null}
      {column ? (
        <ColumnPart
          column={column}
          columns={columns}
          look={look}
          onLook={(next) => {
            close();
            getPlanner().setLook(next);
          }}
        />
      ) : null}
    </div>
  );
}
