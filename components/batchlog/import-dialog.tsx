import { useMemo, useRef, useState } from 'react';
import { readTextFile } from '../../lib/io/plan-file.ts';
import { importLog } from '../../lib/plan/log-text/import-log.ts';
import type { DateOrder } from '../../lib/plan/log-text/read-date.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { importGesture } from '../../lib/views/batch-log/log-gestures.ts';
import { getPlanner } from '../state/planner.ts';
import { NoticeDialog } from '../ui/notice-dialog.tsx';
import styles from './import-dialog.module.css';
import { ImportPreview } from './import-preview.tsx';

interface Props {
  readonly plan: Plan;
  readonly onClose: () => void;
}

function FileButton({ onText }: { readonly onText: (text: string) => void }) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" onClick={() => input.current?.click()}>
        Choose a file …
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept=".csv,.tsv,.txt,text/csv,text/plain"
        data-testid="log-file"
        onChange={(event) => {
          const file = event.target.files?.[0];
          // The same file may be chosen again after it was mended.
          event.target.value = '';
          if (file) void readTextFile(file).then(onText);
        }}
      />
    </>
  );
}

/** Brings batches in from a table: paste or choose it, see what will be taken and what not, and take it as one step. */
export function ImportDialog({ plan, onClose }: Props) {
  const [text, setText] = useState('');
  const [order, setOrder] = useState<DateOrder | null>(null);
  const found = useMemo(() => (text.trim() === '' ? null : importLog(text, plan, order)), [text, plan, order]);
  const take = () => {
    if (!found?.ok) return;
    const { command, said } = importGesture(found.value);
    getPlanner().command(command, said);
    onClose();
  };
  const canTake = found?.ok === true && found.value.entries.length > 0;
  return (
    <NoticeDialog
      title="Bring in a table of batches"
      onClose={onClose}
      closeLabel="Cancel"
      actions={
        <button type="button" className={styles.take} disabled={!canTake} onClick={take}>
          Take them in
        </button>
      }
    >
      <p className={styles.how}>
        Paste rows from a spreadsheet, or choose a CSV file. The first line names the columns, with units where you know
        them: date, chamber, product, wet lb, dry lb, hours, highest pressure mTorr, note. For pressure-rise tests: from
        mTorr, to mTorr, minutes.
      </p>
      <FileButton onText={setText} />
      <textarea
        className={styles.text}
        aria-label="Rows to bring in"
        rows={6}
        spellCheck={false}
        value={text}
        onChange={(event) => setText(event.target.value)}
      />
      {found === null ? null : found.ok ? (
        <ImportPreview plan={plan} found={found.value} onOrder={setOrder} />
      ) : (
        <p className={styles.bad} role="alert">
          {found.error.problem} {found.error.remedy}
        </p>
      )}
    </NoticeDialog>
  );
}
