import { useState } from 'react';
import { LIMITS } from '../../lib/plan/limits.ts';
import { writeNote } from '../../lib/views/cell-notes.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import { getPlanner } from '../state/planner.ts';
import { NoticeDialog } from '../ui/notice-dialog.tsx';
import type { NamedCell } from './named-cell.ts';
import styles from './note-dialog.module.css';

interface Props {
  readonly cell: NamedCell;
  /** What the cell is called: its column and its scenario. */
  readonly title: string;
  readonly note: string;
  readonly onClose: () => void;
}

/** Writes, changes or removes the note on a cell. */
export function NoteDialog({ cell, title, note, onClose }: Props) {
  const [text, setText] = useState(note);
  const save = (words: string) => {
    const planner = getPlanner();
    const gesture = writeNote(presentState(planner.getState().sheet).plan, cell, words);
    if (gesture) planner.command(gesture.command, gesture.said);
    onClose();
  };
  return (
    <NoticeDialog
      title={`Note on ${title}`}
      onClose={onClose}
      closeLabel="Leave it"
      actions={
        <>
          {note === '' ? null : (
            <button type="button" onClick={() => save('')}>
              Remove the note
            </button>
          )}
          <button type="button" onClick={() => save(text)}>
            Save the note
          </button>
        </>
      }
    >
      <textarea
        className={styles.text}
        aria-label="Note"
        rows={5}
        maxLength={LIMITS.cellNote}
        value={text}
        // biome-ignore lint/a11y/noAutofocus: the window was opened to write
        autoFocus
        onChange={(event) => setText(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) save(text);
        }}
      />
      <p className={styles.hint}>It is kept in the plan and saved with it. Ctrl + Enter saves it.</p>
    </NoticeDialog>
  );
}
