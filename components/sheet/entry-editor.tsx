import type { CustomCellEditorProps } from 'ag-grid-react';
import { useEffect, useRef } from 'react';
import styles from './sheet.module.css';
import type { SheetContext } from './sheet-context.ts';
import type { SheetLine } from './sheet-line.ts';

interface Props extends CustomCellEditorProps<SheetLine, string, SheetContext> {
  readonly scenarioId: string;
  readonly columnId: string;
  readonly label: string;
}

/** What the editor starts with: the key that opened it, nothing after a deleting key, or else what is in the cell. */
function startText(key: string | null, value: string | null | undefined): string {
  if (key === 'Backspace' || key === 'Delete') return '';
  return key !== null && key.length === 1 ? key : (value ?? '');
}

/** Free text in a cell; what is understood of it is shown under the sheet while it is typed. */
export function EntryEditor({ initialValue, eventKey, onValueChange, scenarioId, columnId, label, context }: Props) {
  const ref = useRef<HTMLInputElement>(null);
  const start = startText(eventKey, initialValue);
  const report = (text: string) => {
    onValueChange(text);
    context.onTyping({ scenarioId, columnId, text });
  };
  const leave = ({ key }: KeyboardEvent) => {
    const text = ref.current?.value;
    if ((key === 'Enter' || key === 'Tab') && text !== undefined) context.onLeaving({ scenarioId, columnId, text });
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the editor opens
  useEffect(() => {
    // Before the grid hears of the key and takes the editor away.
    ref.current?.addEventListener('keydown', leave);
    context.onOpened();
    context.isTypedOver.current = eventKey !== null && eventKey.length === 1;
    if (start !== initialValue) report(start);
    ref.current?.focus();
    if (eventKey === null || eventKey.length > 1) ref.current?.select();
    return () => context.onTyping(null);
  }, []);
  return (
    <input
      ref={ref}
      className={styles.entry}
      aria-label={label}
      defaultValue={start}
      autoComplete="off"
      spellCheck={false}
      onChange={(event) => report(event.target.value)}
    />
  );
}
