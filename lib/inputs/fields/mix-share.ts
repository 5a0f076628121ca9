import type { InputField } from '../input-field.ts';

/** The part of all batches that one product takes. */
export const MIX_SHARE_FIELDS = [
  {
    kind: 'number',
    id: 'mixShare.share',
    label: 'Share of batches',
    group: 'Product mix',
    dimension: 'fraction',
    unit: '%',
    value: 100,
    min: 0,
    max: 100,
    meaning: 'Planned share of all batches; shares sum to 100 %.',
  },
] as const satisfies readonly InputField[];
