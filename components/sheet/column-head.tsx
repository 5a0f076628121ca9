import type { CustomHeaderProps } from 'ag-grid-react';
import { useRef } from 'react';
import type { ColumnSort } from '../../lib/views/sheet-look.ts';
import { Sign } from '../ui/sign.tsx';
import styles from './sheet.module.css';
import type { SheetContext } from './sheet-context.ts';
import type { SheetLine } from './sheet-line.ts';

interface Props extends CustomHeaderProps<SheetLine, SheetContext> {
  readonly unit: string;
  readonly sort: ColumnSort['way'] | null;
  readonly isFiltered: boolean;
}

function stateWords(sort: ColumnSort['way'] | null, isFiltered: boolean): string {
  const words = [sort === null ? '' : `sorted, ${sort}`, isFiltered ? 'filtered' : ''].filter((part) => part !== '');
  return words.length === 0 ? '' : ` (${words.join(', ')})`;
}

/** The head of a column: its name, under it the unit of its figures, and signs for sorting and filtering. A press opens its menu. */
export function ColumnHead({ displayName, unit, sort, isFiltered, column, context }: Props) {
  const ref = useRef<HTMLButtonElement>(null);
  return (
    <button
      ref={ref}
      type="button"
      className={styles.head}
      tabIndex={-1}
      aria-haspopup="dialog"
      title={`${displayName}: sort, filter, hide`}
      onClick={() => (ref.current ? context.onColumnMenu(column.getColId(), ref.current) : undefined)}
    >
      <span>
        {displayName}
        {isFiltered ? <span className={styles.filterMark} aria-hidden="true" /> : null}
        <span className="visually-hidden">{stateWords(sort, isFiltered)}</span>
      </span>
      <span className={styles.headFoot}>
        {sort === null ? null : <Sign name={sort === 'rising' ? 'up' : 'down'} />}
        {unit === '' ? null : <span className={styles.headUnit}>{unit}</span>}
      </span>
    </button>
  );
}
