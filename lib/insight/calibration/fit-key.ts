import { EXCESS_SCALE, FACTOR_SCALE, type FitScale } from './fit-scale.ts';

/** The inputs that hours and pressures of a log are fitted with. */
export const FIT_KEYS = [
  'heatContact',
  'trapVapourConductance',
  'spread',
  'permeability',
  'driedConductivity',
  'desorptionRate',
] as const;

export type FitKey = (typeof FIT_KEYS)[number];

export interface FitKeyRule {
  readonly section: 'chamber' | 'product';
  readonly scale: FitScale;
  /**
   * Spread of what shops of this kind have, as a standard deviation on the scale, for a value that has no low and high.
   * Common practice, no source: contact differs by half as much again from tray to tray, permeability by a factor of two.
   */
  readonly usualSpread: number;
}

/** What is known of each before the log is read. */
export const FIT_RULES: Readonly<Record<FitKey, FitKeyRule>> = {
  heatContact: { section: 'chamber', scale: FACTOR_SCALE, usualSpread: 0.4 },
  trapVapourConductance: { section: 'chamber', scale: FACTOR_SCALE, usualSpread: 0.5 },
  spread: { section: 'product', scale: EXCESS_SCALE, usualSpread: 0.6 },
  permeability: { section: 'product', scale: FACTOR_SCALE, usualSpread: 0.7 },
  driedConductivity: { section: 'product', scale: FACTOR_SCALE, usualSpread: 0.2 },
  desorptionRate: { section: 'product', scale: FACTOR_SCALE, usualSpread: 0.35 },
};
