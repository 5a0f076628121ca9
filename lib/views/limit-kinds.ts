import type { DryingLimit } from '../plant/report-types.ts';

/** What holds drying back, as charts tell it apart, in the order in which it is stacked. */
export const LIMIT_LABELS: Readonly<Record<DryingLimit, string>> = {
  shelfTemperature: 'shelf programme',
  heaterPower: 'heater power',
  frozenLimit: 'frozen part near melting',
  scorchLimit: 'dried surface near scorching',
  ceilingByTrap: 'vapour over the trap',
  ceilingByGas: 'gas left by the pump',
  flooded: 'air of a newcomer',
  desorption: 'last water leaving slowly',
};

export const DRYING_LIMITS = Object.keys(LIMIT_LABELS) as readonly DryingLimit[];
