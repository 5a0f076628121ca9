import type { InputField } from '../input-field.ts';

/** How many chambers of one type a scenario has. */
export const SCENARIO_CHAMBER_FIELDS = [
  {
    kind: 'number',
    id: 'scenarioChamber.count',
    label: 'Chambers',
    group: 'Set-up',
    dimension: 'count',
    unit: '',
    value: 1,
    min: 0,
    max: 24,
    integer: true,
    meaning: 'Chambers of this type.',
  },
] as const satisfies readonly InputField[];
