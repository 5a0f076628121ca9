import { useEffect, useMemo, useState } from 'react';
import { offerBlob } from '../../lib/io/offer-blob.ts';
import { lenderBasisStudy } from '../../lib/io/studies.ts';
import type { ScenarioResult } from '../../lib/model/scenario-result.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { figureFileName } from '../../lib/views/figure-file-name.ts';
import { getPlanner } from '../state/planner.ts';
import { getStudyDesk, useStudy } from '../state/study-desk.ts';

interface Props {
  readonly plan: Plan;
  readonly scenarioId: string;
  /** Of the plan as it stands; null while it is being worked out. */
  readonly result: ScenarioResult | null;
  readonly paper: 'a4' | 'letter';
}

/** Saves the projections as a workbook with live formulas. What writes it is fetched when it is asked for. */
export function WorkbookButton({ plan, scenarioId, result, paper }: Props) {
  const [isWriting, setWriting] = useState(false);
  const state = useStudy('lenderBasis');
  const study = useMemo(() => lenderBasisStudy(plan, scenarioId), [plan, scenarioId]);
  const isReady = result !== null;
  useEffect(() => {
    if (isReady && getStudyDesk().states().lenderBasis.answer?.key !== study.key) getStudyDesk().start(study);
  }, [isReady, study]);
  const basis = state.answer?.key === study.key ? state.answer.value : null;
  async function save() {
    if (!basis || !result) return;
    setWriting(true);
    try {
      const { saveableWorkbook } = await import('./saveable-workbook.ts');
      const name = `${figureFileName('lender-workbook', result.name)}.xlsx`;
      offerBlob(name, await saveableWorkbook(plan, basis, result, paper));
      getPlanner().say(`Saved as ${name}.`);
    } catch {
      getPlanner().say('The workbook could not be written. Try again, or change an entry.', 'bad');
    } finally {
      setWriting(false);
    }
  }
  return (
    <button type="button" disabled={!basis || !result || isWriting} onClick={() => void save()}>
      {isWriting ? 'Writing the workbook …' : 'Save as workbook'}
    </button>
  );
}
