import type { DryingLimit } from './report-types.ts';

/** Limits in a fixed order, so that a log can hold them as numbers. Index 0 is "no load drying". */
export const LIMIT_CODES: readonly (DryingLimit | null)[] = [
  null,
  'shelfTemperature',
  'heaterPower',
  'frozenLimit',
  'scorchLimit',
  'ceilingByTrap',
  'ceilingByGas',
  'flooded',
  'desorption',
];

export function limitCode(limit: DryingLimit): number {
  return LIMIT_CODES.indexOf(limit);
}
