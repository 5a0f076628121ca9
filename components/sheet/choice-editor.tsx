import type { CustomCellEditorProps } from 'ag-grid-react';
import { useEffect, useRef, useState } from 'react';
import { firstWith } from '../../lib/views/first-with.ts';
import styles from './sheet.module.css';
import type { SheetContext } from './sheet-context.ts';
import type { SheetLine } from './sheet-line.ts';

interface Props extends CustomCellEditorProps<SheetLine, string, SheetContext> {
  readonly scenarioId: string;
  readonly columnId: string;
  readonly options: readonly string[];
  readonly label: string;
}

/** One of a few words in a cell; the list opens at once, and choosing ends the editing. A letter chooses by first letter. */
export function ChoiceEditor({ value, eventKey, onValueChange, stopEditing, context, ...cell }: Props) {
  const { scenarioId, columnId, options, label } = cell;
  const ref = useRef<HTMLSelectElement>(null);
  const [chosen, setChosen] = useState<string | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the editor opens
  useEffect(() => {
    context.isTypedOver.current = false;
    context.onOpened();
    context.onExpected(options.filter((text) => text !== value).map((text) => ({ scenarioId, columnId, text })));
    const typed = firstWith(eventKey, options);
    if (typed !== undefined) onValueChange(typed);
    ref.current?.focus();
    try {
      if (typed === undefined) ref.current?.showPicker();
    } catch {
      // The browser opens lists only right after a gesture; the closed list works as well.
    }
    return () => context.onExpected([]);
  }, []);
  // The grid must have heard of the value before the editing ends.
  useEffect(() => {
    if (chosen === null) return;
    stopEditing();
    context.onChosen({ scenarioId, columnId, text: chosen });
  }, [chosen, stopEditing, context, scenarioId, columnId]);
  const known = value !== null && value !== undefined && options.includes(value);
  return (
    <select
      ref={ref}
      className={styles.choice}
      aria-label={label}
      value={known ? value : ''}
      onChange={(event) => {
        onValueChange(event.target.value);
        setChosen(event.target.value);
      }}
    >
      {known ? null : <option value="">{value ?? ''}</option>}
      {options.map((option) => (
        <option key={option}>{option}</option>
      ))}
    </select>
  );
}
