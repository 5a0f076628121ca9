'use client';

import { EvidencePanel } from '../evidence/evidence-panel.tsx';
import { ExplainPanel } from '../explain/explain-panel.tsx';
import { useExplained } from '../explain/use-explained.ts';
import { usePlanner } from '../state/use-planner.ts';
import { CautionsBlock } from './cautions-block.tsx';
import styles from './scenarios-panel.module.css';
import { SheetPart } from './sheet-part.tsx';
import { useScenarioContent } from './use-scenario-content.ts';

/** The sheet of scenarios, and under it the evidence for the one that is chosen. */
export default function ScenariosPanel() {
  const desk = usePlanner((state) => state.desk);
  const currentId = usePlanner((state) => state.currentId);
  const selectedIds = usePlanner((state) => state.selectedIds);
  const explained = useExplained();
  const content = useScenarioContent();
  const { rows } = content;
  const { plan } = content.state;
  return (
    <div className={styles.parts}>
      <SheetPart content={content} onExplain={explained.open} canExplain={explained.canOpen} />
      {explained.cell ? (
        <ExplainPanel cell={explained.cell} plan={plan} desk={desk} rows={rows} onClose={explained.close} />
      ) : null}
      <EvidencePanel {...{ plan, rows, desk, currentId, selectedIds }} />
      <CautionsBlock rows={rows} />
    </div>
  );
}
