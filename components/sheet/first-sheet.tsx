import { arrangedColumns, isVisible } from '../../lib/views/arrange-columns.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import { GROUP_LABELS, type SheetColumn } from '../../lib/views/sheet-columns.ts';
import type { SheetLook } from '../../lib/views/sheet-look.ts';
import { shownCell } from '../../lib/views/shown-rows.ts';
import styles from './first-sheet.module.css';
import { FlagCell } from './flag-cell.tsx';
import { NameCell } from './name-cell.tsx';

interface Props {
  readonly rows: readonly ScenarioRow[];
  readonly columns: readonly SheetColumn[];
  readonly look: SheetLook;
}

interface CellProps {
  readonly row: ScenarioRow;
  readonly column: SheetColumn;
}

function Cell({ row, column }: CellProps) {
  if (column.id === 'name') return <NameCell row={row} />;
  if (column.kind === 'flag') return <FlagCell row={row} />;
  return shownCell(row, column.id).text;
}

/** How many columns from this one on belong to its group; 0 when it is not the first of them. The name has none. */
function groupSpan(columns: readonly SheetColumn[], at: number): number {
  const groupAt = (place: number) => (columns[place]?.id === 'name' ? 'name' : columns[place]?.group);
  if (at > 0 && groupAt(at - 1) === groupAt(at)) return 0;
  const rest = columns.slice(at).findIndex((_, further) => groupAt(at + further) !== groupAt(at));
  return rest < 0 ? columns.length - at : rest;
}

/** The sheet to be read, in the few moments until it can be worked at: as wide and as high as the one that takes its place. */
export function FirstSheet({ rows, columns, look }: Props) {
  const visible = arrangedColumns(columns, look).filter((column) => isVisible(column, look));
  const spans = visible.map((column, at) => ({ column, span: groupSpan(visible, at) }));
  return (
    <div className={styles.frame}>
      <table className={styles.table} style={{ width: visible.reduce((sum, { width }) => sum + width, 0) }}>
        <colgroup>
          {visible.map(({ id, width }) => (
            <col key={id} style={{ width }} />
          ))}
        </colgroup>
        <thead>
          <tr className={styles.groups}>
            {spans.map(({ column, span }) =>
              span === 0 ? null : (
                <td key={column.id} colSpan={span}>
                  {column.id === 'name' ? '' : GROUP_LABELS[column.group]}
                </td>
              ),
            )}
          </tr>
          <tr className={styles.heads}>
            {visible.map(({ id, label, unit, isFigure }) => (
              <th key={id} scope="col" className={isFigure ? styles.figure : undefined}>
                <span className={styles.head}>
                  <span>{label}</span>
                  <span className={styles.unit}>{unit}</span>
                </span>
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.id} className={row.isToday ? styles.today : undefined}>
              {visible.map((column) => (
                <td key={column.id} className={column.isFigure ? styles.figure : undefined}>
                  <Cell row={row} column={column} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
