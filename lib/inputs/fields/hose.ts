import type { InputField } from '../input-field.ts';

/** What the planner asks about the hose from a chamber to its pump. */
export const HOSE_FIELDS = [
  {
    kind: 'quantity',
    id: 'hose.diameter',
    label: 'Inner diameter',
    group: 'Size',
    dimension: 'length',
    unit: 'mm',
    value: 40,
    origin: 'guess',
    min: 4,
    max: 400,
    meaning: 'Clear width inside the hose.',
  },
  {
    kind: 'quantity',
    id: 'hose.length',
    label: 'Length',
    group: 'Size',
    dimension: 'length',
    unit: 'm',
    value: 3,
    origin: 'guess',
    min: 0.05,
    max: 60,
    meaning: 'Length of the hose, with some extra for each bend, fitting and valve.',
  },
  {
    kind: 'quantity',
    id: 'hose.price',
    label: 'Price',
    group: 'Money',
    dimension: 'money',
    unit: 'money',
    value: 160,
    origin: 'guess',
    min: 0,
    max: 100000,
    meaning: 'Price of one hose with its clamps.',
  },
] as const satisfies readonly InputField[];
