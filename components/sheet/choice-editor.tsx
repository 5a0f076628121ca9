import type { CustomCellEditorProps } from 'ag-grid-react';
import { useEffect, useRef, useState } from 'react';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import styles from './sheet.module.css';
import type { SheetContext } from './sheet-context.ts';

interface Props extends CustomCellEditorProps<ScenarioRow, string, SheetContext> {
  readonly options: readonly string[];
}

/** One of a few words in a cell; the list opens at once, and choosing ends the editing. */
export function ChoiceEditor({ value, onValueChange, stopEditing, options, column, data }: Props) {
  const ref = useRef<HTMLSelectElement>(null);
  const [isChosen, setChosen] = useState(false);
  useEffect(() => {
    ref.current?.focus();
    try {
      ref.current?.showPicker();
    } catch {
      // The browser opens lists only right after a gesture; the closed list works as well.
    }
  }, []);
  // The grid must have heard of the value before the editing ends.
  useEffect(() => {
    if (isChosen) stopEditing();
  }, [isChosen, stopEditing]);
  const known = value !== null && value !== undefined && options.includes(value);
  return (
    <select
      ref={ref}
      className={styles.choice}
      aria-label={`${column.getColDef().headerName}, ${data.name}`}
      value={known ? value : ''}
      onChange={(event) => {
        onValueChange(event.target.value);
        setChosen(true);
      }}
    >
      {known ? null : <option value="">{value ?? ''}</option>}
      {options.map((option) => (
        <option key={option}>{option}</option>
      ))}
    </select>
  );
}
