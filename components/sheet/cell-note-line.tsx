import type { CellNote } from '../../lib/views/cell-note.ts';
import type { EntryPreview } from '../../lib/views/preview-entry.ts';
import styles from './cell-note-line.module.css';

interface Props {
  readonly note: CellNote | null;
  /** What is understood of the text being typed; null when nothing is typed. */
  readonly preview: EntryPreview | null;
  /** Shows how the cell's figure was worked out; null where there is nothing to work out. */
  readonly onExplain: (() => void) | null;
}

const HINT = 'Choose a cell to read what it means. Entries take sums and units, such as 2+3 or 1 year.';

/** The line under the sheet: what the cell means, what is wrong with it, and what is understood while typing. */
export function CellNoteLine({ note, preview, onExplain }: Props) {
  return (
    <div className={styles.line} data-testid="cell-note">
      {preview ? (
        <p className={preview.isGood ? styles.understood : styles.fault}>{preview.words}</p>
      ) : (
        <p className={note ? undefined : styles.hint}>
          {note ? <strong>{note.value === '' ? note.label : `${note.label}: ${note.value}`}</strong> : HINT}{' '}
          {note?.words}{' '}
          {onExplain ? (
            <button type="button" className={styles.explain} aria-keyshortcuts="Control+Enter" onClick={onExplain}>
              Show the numbers
            </button>
          ) : null}
        </p>
      )}
      <p className={styles.fault} aria-live="polite">
        {preview ? '' : note?.fault}
      </p>
      <p className={styles.note} aria-live="polite">
        {note && note.note !== '' ? (
          <>
            <strong>Note:</strong> {note.note}
          </>
        ) : null}
      </p>
      {note?.messages.map((message) => (
        <p key={message.problem} className={message.severity === 'error' ? styles.fault : styles.warning}>
          {message.problem} {message.remedy}
        </p>
      ))}
    </div>
  );
}
