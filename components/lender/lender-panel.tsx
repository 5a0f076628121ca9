'use client';

import { useMemo, useState } from 'react';
import { today as todayIs } from '../../lib/io/today.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { lenderDocument } from '../../lib/views/lender/lender-document.ts';
import { pageRules } from '../../lib/views/lender/page-rules.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import { getPlanner } from '../state/planner.ts';
import { usePlanner } from '../state/use-planner.ts';
import { ChoiceBar } from '../ui/choice-bar.tsx';
import styles from './lender-panel.module.css';
import { LenderPaper } from './lender-paper.tsx';
import { useLenderSources } from './use-lender-sources.ts';
import { WorkbookButton } from './workbook-button.tsx';

const PAPERS = [
  { value: 'a4', label: 'A4' },
  { value: 'letter', label: 'Letter' },
] as const;

type Paper = (typeof PAPERS)[number]['value'];

function ScenarioChoice({ plan, scenarioId }: { readonly plan: Plan; readonly scenarioId: string }) {
  return (
    <select
      aria-label="Scenario the papers are for"
      value={scenarioId}
      onChange={(event) => getPlanner().lookAt(event.target.value)}
    >
      {plan.scenarios.map(({ id, name }) => (
        <option key={id} value={id}>
          {name}
        </option>
      ))}
    </select>
  );
}

/** The papers for a lender: on the screen as they are printed, and a workbook to go with them. */
export default function LenderPanel() {
  const sheet = usePlanner((state) => state.sheet);
  const scenarioId = usePlanner((state) => state.currentId);
  const { plan } = presentState(sheet);
  const [chosenPaper, setPaper] = useState<Paper | null>(null);
  const paper = chosenPaper ?? (plan.site.unitSystem === 'us' ? 'letter' : 'a4');
  const [date] = useState(todayIs);
  const { sources, words } = useLenderSources(plan, scenarioId, date);
  const papers = useMemo(() => (sources ? lenderDocument(sources) : null), [sources]);
  return (
    <div className={styles.panel}>
      <div className={styles.tools}>
        <h2>The papers for</h2>
        <ScenarioChoice plan={plan} scenarioId={scenarioId} />
        <ChoiceBar label="Paper" options={PAPERS} value={paper} onChange={setPaper} />
        <button type="button" disabled={papers === null} onClick={() => window.print()}>
          Print or save as PDF
        </button>
        <WorkbookButton plan={plan} scenarioId={scenarioId} result={sources?.result ?? null} paper={paper} />
      </div>
      <p role="status" className={styles.state}>
        {words}
      </p>
      {papers && sources ? (
        <div className={styles.desk}>
          <style>{pageRules(papers, paper)}</style>
          <LenderPaper papers={papers} sources={sources} paper={paper} />
        </div>
      ) : null}
    </div>
  );
}
