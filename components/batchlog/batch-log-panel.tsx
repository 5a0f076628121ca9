'use client';

import { useMemo, useState } from 'react';
import { today } from '../../lib/io/today.ts';
import type { LogEntry } from '../../lib/plan/plan-types.ts';
import { draftOf, type LogDraft, newDraft } from '../../lib/views/batch-log/log-draft.ts';
import { forgetEntryGesture } from '../../lib/views/batch-log/log-gestures.ts';
import { batchTable, testTable } from '../../lib/views/batch-log/log-tables.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import { FollowLine } from '../catalogue/follow-line.tsx';
import { getPlanner } from '../state/planner.ts';
import { usePlanner } from '../state/use-planner.ts';
import styles from './batch-log.module.css';
import { CalibrationPart } from './calibration-part.tsx';
import { ImportDialog } from './import-dialog.tsx';
import { LogForm } from './log-form.tsx';
import { LogTableView } from './log-table-view.tsx';
import { LogTools } from './log-tools.tsx';

/** The batch log: what was dried and how long it took, and what that says of the model. */
export default function BatchLogPanel() {
  const sheet = usePlanner((state) => state.sheet);
  const { plan } = useMemo(() => presentState(sheet), [sheet]);
  const [draft, setDraft] = useState<LogDraft | null>(null);
  const [isImporting, setImporting] = useState(false);
  const batches = useMemo(() => batchTable(plan), [plan]);
  const tests = useMemo(() => testTable(plan), [plan]);
  const planner = getPlanner();

  const edit = (id: string) => {
    const entry = plan.batchLog.find((candidate) => candidate.id === id);
    if (entry) setDraft(draftOf(plan, entry));
  };
  const forget = (id: string) => {
    const { command, said } = forgetEntryGesture(plan, id);
    planner.command(command, said);
    if (draft?.id === id) setDraft(null);
  };
  const begin = (kind: LogEntry['kind']) => setDraft(newDraft(plan, kind, today()));
  return (
    <div className={styles.panel}>
      <FollowLine plan={plan} />
      <LogTools plan={plan} onNew={begin} onImport={() => setImporting(true)} />
      {draft ? (
        <LogForm
          key={`${draft.kind} ${draft.id} ${plan.batchLog.length}`}
          plan={plan}
          start={draft}
          onDone={() => setDraft(null)}
          onNext={(next) => setDraft(next)}
        />
      ) : null}
      <CalibrationPart plan={plan} />
      <LogTableView
        title="Batches"
        empty="No batch is logged yet. Log one, or bring in the table you keep."
        table={batches}
        onEdit={edit}
        onForget={forget}
      />
      <LogTableView
        title="Pressure-rise tests"
        empty="No test is logged yet. Shut the valve of an empty, cold chamber for ten minutes and log the two pressures."
        table={tests}
        onEdit={edit}
        onForget={forget}
      />
      {isImporting ? <ImportDialog plan={plan} onClose={() => setImporting(false)} /> : null}
    </div>
  );
}
