import type { InputField } from '../input-field.ts';

/** One shift of a shift pattern; its weekdays stand beside it in the plan. */
export const SHIFT_FIELDS = [
  {
    kind: 'number',
    id: 'shift.start',
    label: 'Starts',
    group: 'Shift',
    dimension: 'time',
    unit: 'h',
    value: 7,
    min: 0,
    max: 24,
    meaning: 'Hour of the day at which the shift starts.',
  },
  {
    kind: 'number',
    id: 'shift.end',
    label: 'Ends',
    group: 'Shift',
    dimension: 'time',
    unit: 'h',
    value: 15.5,
    min: 0,
    max: 24,
    meaning: 'Hour of the day at which it ends; a night shift is entered as two shifts, before and after midnight.',
  },
  {
    kind: 'number',
    id: 'shift.people',
    label: 'People',
    group: 'Shift',
    dimension: 'count',
    unit: '',
    value: 1,
    min: 0,
    max: 100,
    integer: true,
    meaning: 'People on the shift.',
  },
] as const satisfies readonly InputField[];
