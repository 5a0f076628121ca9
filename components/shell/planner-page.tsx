'use client';

import { Suspense } from 'react';
import { LinkedDialog } from '../plans/linked-dialog.tsx';
import { getPlanner } from '../state/planner.ts';
import { usePlanner } from '../state/use-planner.ts';
import { NewerVersion } from './newer-version.tsx';
import { OpenFailureDialog } from './open-failure-dialog.tsx';
import { PageHeader } from './page-header.tsx';
import styles from './planner-page.module.css';
import { ProgressLine } from './progress-line.tsx';
import { panelElementId, TabBar, tabElementId } from './tab-bar.tsx';
import { useHistoryKeys } from './use-history-keys.ts';
import { useOpenTab } from './use-open-tab.ts';

function StatusLine() {
  const notice = usePlanner((state) => state.notice);
  return (
    <p role="status" className={styles.status} data-tone={notice.tone}>
      {notice.text}
    </p>
  );
}

function FileDialog() {
  const failure = usePlanner((state) => state.openFailure);
  return failure ? <OpenFailureDialog failure={failure} onClose={getPlanner().closeOpenFailure} /> : null;
}

/** The planner's page: a head for the plan as a whole, a bar of its parts, and the part that is open. */
export default function PlannerPage() {
  const isStarting = usePlanner((state) => state.keeping === 'starting');
  const tab = useOpenTab();
  useHistoryKeys();
  if (isStarting) return <p className={styles.waiting}>Looking for a plan kept in this browser …</p>;
  return (
    <div className={styles.page}>
      <PageHeader />
      <main className={styles.main}>
        <NewerVersion />
        <TabBar open={tab} />
        <div className={styles.said}>
          <StatusLine />
          <ProgressLine />
        </div>
        <div role="tabpanel" id={panelElementId(tab)} aria-labelledby={tabElementId(tab)}>
          <Suspense fallback={<p className={styles.waiting}>Opening …</p>}>
            <tab.Panel />
          </Suspense>
        </div>
      </main>
      <FileDialog />
      <LinkedDialog />
    </div>
  );
}
