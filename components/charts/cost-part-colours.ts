import type { CostPart } from '../../lib/model/scenario-result.ts';

/** CSS colour of each part of the cost; neighbours in the stack differ in lightness. */
export const COST_PART_COLOURS: Readonly<Record<CostPart, string>> = {
  materials: 'var(--series-4)',
  packaging: 'var(--series-8)',
  labour: 'var(--series-2)',
  electricity: 'var(--series-3)',
  oil: 'var(--series-5)',
  other: 'var(--series-6)',
};
