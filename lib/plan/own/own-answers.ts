import type { UnitSystem } from '../../units/dimension.ts';

/** An amount as it was told. */
export interface Told {
  readonly value: number;
  readonly unit: string;
}

export const OWN_HOURS = ['days', 'long-days', 'every-day', 'two-shifts'] as const;

/** When somebody is there. */
export type OwnHours = (typeof OWN_HOURS)[number];

/** What a new user is asked, and how their figures are to be shown. */
export interface OwnAnswers {
  /** Keys of the foods that are dried, most important first. */
  readonly foods: readonly string[];
  readonly chambers: number;
  /** Tray area of one chamber. */
  readonly shelfArea: Told;
  readonly pump: 'own' | 'shared';
  readonly hours: OwnHours;
  /** Of dried product. */
  readonly price: Told;
  /** Dried product that sells in a week, all kinds together; null for all that can be made. */
  readonly weeklyDemand: Told | null;
  readonly currency: string;
  readonly unitSystem: UnitSystem;
}
