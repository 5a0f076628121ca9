import { type KeyboardEvent, useEffect, useRef } from 'react';
import type { FieldCell } from '../../lib/views/fields/field-grid.ts';
import { moveAfterEntry } from '../../lib/views/fields/grid-keys.ts';
import { firstWith } from '../../lib/views/first-with.ts';
import styles from './field-grid.module.css';

interface Props {
  readonly cell: FieldCell;
  /** Replaces what is in the cell; null to go on from it. */
  readonly start: string | null;
  readonly onTyping: (text: string) => void;
  /** Takes the text up; the move tells where to go then, null when the focus has gone elsewhere already. */
  readonly onDone: (text: string, move: { row: number; column: number } | null) => void;
  readonly onCancel: () => void;
}

function nameOf({ owner, look }: FieldCell): string {
  return owner === '' ? look.label : `${look.label}, ${owner}`;
}

/** The word that a typed letter begins, or else the one that stands there. */
function chosenOption(options: readonly string[], start: string | null, shown: string): string | undefined {
  return firstWith(start, options) ?? options.find((option) => option === shown) ?? options[0];
}

/** An open cell: free text, or one of a few words. */
export function CellEditor({ cell, start, onTyping, onDone, onCancel }: Props) {
  const input = useRef<HTMLInputElement & HTMLSelectElement>(null);
  // Taking up by key moves the focus, and the blur that follows must not take up a second time.
  const isClosed = useRef(false);
  const { options } = cell.look;
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the cell opens
  useEffect(() => {
    input.current?.focus();
    if (options) return;
    if (start === null) input.current?.select();
    else onTyping(start);
  }, []);
  const finish = (move: { row: number; column: number } | null) => {
    if (isClosed.current) return;
    isClosed.current = true;
    onDone(input.current?.value ?? '', move);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    event.stopPropagation();
    const move = moveAfterEntry(event.key, event.shiftKey, start !== null && !options);
    if (event.key !== 'Escape' && !move) return;
    event.preventDefault();
    if (move) finish(move);
    else {
      isClosed.current = true;
      onCancel();
    }
  };
  const shared = {
    ref: input,
    className: styles.editor,
    'aria-label': nameOf(cell),
    onKeyDown,
    onBlur: () => finish(null),
  };
  if (options) {
    return (
      <select {...shared} defaultValue={chosenOption(options, start, cell.plainText)}>
        {options.map((option) => (
          <option key={option}>{option}</option>
        ))}
      </select>
    );
  }
  return (
    <input
      {...shared}
      defaultValue={start ?? cell.plainText}
      autoComplete="off"
      spellCheck={false}
      onChange={(event) => onTyping(event.target.value)}
    />
  );
}
