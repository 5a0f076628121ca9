import type { CustomCellRendererProps } from 'ag-grid-react';
import styles from './sheet.module.css';
import { isSideLine, type SheetLine } from './sheet-line.ts';

/** The label of a line of the sheet sideways, with its unit; a heading stands out. */
export function LabelCell({ data }: CustomCellRendererProps<SheetLine>) {
  if (!data || !isSideLine(data)) return null;
  if (!data.column) return <span className={styles.heading}>{data.label}</span>;
  return (
    <span className={styles.label}>
      {data.label} {data.unit === '' ? null : <span className={styles.headUnit}>{data.unit}</span>}
    </span>
  );
}
