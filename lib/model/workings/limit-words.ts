import type { DryingLimit } from '../../plant/report-types.ts';

/** What holds drying back, in words. */
export const LIMIT_WORDS: Readonly<Record<DryingLimit, string>> = {
  shelfTemperature: 'shelf as hot as its programme allows',
  heaterPower: 'heaters at full power',
  frozenLimit: 'frozen part as warm as it may get',
  scorchLimit: 'dried surface as hot as it may get',
  ceilingByTrap: 'pressure ceiling, mostly vapour over the trap',
  ceilingByGas: 'pressure ceiling, mostly gas left by the pump',
  flooded: 'flooded by a newcomer’s air',
  desorption: 'last water leaving slowly',
};

/** Limits that can hold while ice is drying off. */
export const SUBLIMATION_LIMITS: readonly DryingLimit[] = [
  'shelfTemperature',
  'heaterPower',
  'frozenLimit',
  'scorchLimit',
  'ceilingByTrap',
  'ceilingByGas',
  'flooded',
];
