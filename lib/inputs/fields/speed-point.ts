import type { InputField } from '../input-field.ts';

/** One measured point of a pump's speed curve, as makers' sheets print it. */
export const SPEED_POINT_FIELDS = [
  {
    kind: 'number',
    id: 'speedPoint.pressure',
    label: 'Inlet pressure',
    group: 'Speed curve',
    dimension: 'pressure',
    unit: 'Pa',
    value: 100,
    min: 0.0001,
    max: 120000,
    meaning: 'Pressure at the pump inlet.',
  },
  {
    kind: 'number',
    id: 'speedPoint.speed',
    label: 'Speed there',
    group: 'Speed curve',
    dimension: 'pumpingSpeed',
    unit: 'm³/h',
    value: 16,
    min: 0,
    max: 5000,
    meaning: 'Volume the pump takes away per hour at that pressure.',
  },
] as const satisfies readonly InputField[];
