import { memo } from 'react';
import { ORIGIN_LABELS } from '../../lib/views/fields/field-details.ts';
import type { FieldCell } from '../../lib/views/fields/field-grid.ts';
import { NONE } from '../../lib/views/format-number.ts';
import { isSameData } from '../../lib/views/keep-same.ts';
import { CellEditor } from './cell-editor.tsx';
import styles from './field-grid.module.css';
import type { GridHands } from './use-field-grid.ts';

interface Props {
  readonly cell: FieldCell;
  readonly row: number;
  readonly column: number;
  readonly isSelected: boolean;
  readonly isHead: boolean;
  /** The text the open cell starts with, null for its own; undefined when it is not open. */
  readonly open: string | null | undefined;
  readonly hands: GridHands;
}

function isSame(before: Props, after: Props): boolean {
  const { cell: was, ...others } = before;
  const { cell: is, ...next } = after;
  return (
    was.look === is.look &&
    isSameData({ ...was, look: null }, { ...is, look: null }) &&
    (Object.keys(others) as (keyof typeof others)[]).every((key) => others[key] === next[key])
  );
}

/** One cell of a grid of fields: its figure, and where that came from. */
export const FieldCellView = memo(function FieldCellView(props: Props) {
  const { cell, row, column, isSelected, isHead, open, hands } = props;
  const { text, origin, fault, look } = cell;
  return (
    <td
      // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: a cell of a grid can be selected and opened
      role="gridcell"
      className={styles.cell}
      data-row={row}
      data-column={column}
      data-place={cell.place}
      data-origin={fault ? undefined : (origin ?? undefined)}
      data-head={isHead}
      data-figure={look.isFigure}
      aria-selected={isSelected}
      aria-invalid={fault ? true : undefined}
      tabIndex={isHead ? 0 : -1}
      onMouseDown={(event) => hands.press(event, { row, column })}
      onMouseEnter={(event) => hands.drag(event, { row, column })}
      onDoubleClick={() => hands.open({ row, column })}
    >
      {open === undefined ? (
        <span className={styles.content}>
          {origin && !fault ? <span className={styles.origin}>{ORIGIN_LABELS[origin]}</span> : null}
          {fault ? <span className={styles.faultSign}>!</span> : null}
          <span className={text === NONE ? styles.none : styles.text}>{text}</span>
        </span>
      ) : (
        <CellEditor
          cell={cell}
          start={open}
          onTyping={(typed) => hands.typing(cell, typed)}
          onDone={(entry, move) => hands.done(cell, entry, move)}
          onCancel={hands.cancel}
        />
      )}
    </td>
  );
}, isSame);
