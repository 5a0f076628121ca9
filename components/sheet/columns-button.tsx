import { useState } from 'react';
import { arrangedColumns, isVisible, movedColumn, withColumn } from '../../lib/views/arrange-columns.ts';
import { GROUP_LABELS, type SheetColumn } from '../../lib/views/sheet-columns.ts';
import { type SheetLook, USUAL_LOOK } from '../../lib/views/sheet-look.ts';
import { getPlanner } from '../state/planner.ts';
import { NoticeDialog } from '../ui/notice-dialog.tsx';
import { SignButton } from '../ui/sign-button.tsx';
import styles from './columns-button.module.css';

interface LineProps {
  readonly column: SheetColumn;
  readonly columns: readonly SheetColumn[];
  readonly look: SheetLook;
}

function ColumnLine({ column, columns, look }: LineProps) {
  const { setLook } = getPlanner();
  const [before, after] = [movedColumn(columns, look, column.id, -1), movedColumn(columns, look, column.id, 1)];
  return (
    <li className={styles.line}>
      <label>
        <input
          type="checkbox"
          checked={isVisible(column, look)}
          disabled={column.id === 'name'}
          onChange={(event) => setLook(withColumn(look, column, event.target.checked))}
        />
        {column.label}
      </label>
      <SignButton
        sign="up"
        label={`Move ${column.label} back`}
        disabled={!before}
        onPress={() => before && setLook(before)}
      />
      <SignButton
        sign="down"
        label={`Move ${column.label} on`}
        disabled={!after}
        onPress={() => after && setLook(after)}
      />
    </li>
  );
}

interface Props {
  readonly columns: readonly SheetColumn[];
  readonly look: SheetLook;
}

/** A button that shows which columns there are, and lets them be shown, hidden and put in order. */
export function ColumnsButton({ columns, look }: Props) {
  const [isOpen, setOpen] = useState(false);
  const arranged = arrangedColumns(columns, look);
  const groups = [...new Set(arranged.map((column) => column.group))];
  const usual = () => {
    const { order, shown, isWhole } = USUAL_LOOK;
    getPlanner().setLook({ ...look, order, shown, isWhole });
  };
  return (
    <>
      <SignButton sign="columns" label="Columns" wordy="roomy" onPress={() => setOpen(true)} />
      {isOpen ? (
        <NoticeDialog
          title="Columns of the sheet"
          onClose={() => setOpen(false)}
          actions={
            <button type="button" onClick={usual}>
              As usual
            </button>
          }
        >
          {groups.map((group) => (
            <section key={group} aria-label={GROUP_LABELS[group]}>
              <h3>{GROUP_LABELS[group]}</h3>
              <ul className={styles.list}>
                {arranged
                  .filter((column) => column.group === group)
                  .map((column) => (
                    <ColumnLine key={column.id} column={column} columns={columns} look={look} />
                  ))}
              </ul>
            </section>
          ))}
        </NoticeDialog>
      ) : null}
    </>
  );
}
