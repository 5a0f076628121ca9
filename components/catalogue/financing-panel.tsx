import { useMemo } from 'react';
import { PART_CAUTIONS } from '../../lib/views/cautions.ts';
import { innerBlocks, singleBlock } from '../../lib/views/fields/field-block.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import { usePlanner } from '../state/use-planner.ts';
import { PartPanel } from './part-panel.tsx';

/** Money in hand, loans, tax and yardsticks. */
export default function FinancingPanel() {
  const sheet = usePlanner((state) => state.sheet);
  const state = useMemo(() => presentState(sheet), [sheet]);
  const blocks = useMemo(() => {
    const terms = singleBlock(state, 'financing', 'Yardsticks, working capital and tax');
    return [...innerBlocks(state, terms.owners, 'financing'), terms];
  }, [state]);
  return <PartPanel state={state} blocks={blocks} cautions={PART_CAUTIONS.financing} />;
}
