import type { TariffBand } from '../cost/tariff.ts';
import { baseValues } from '../inputs/base-values.ts';
import type { PriceBand } from '../plan/plan-types.ts';

const SECONDS_PER_HOUR = 3600;

/** A price band of the plan as the tariff needs it. */
export function tariffBand(band: PriceBand): TariffBand {
  const { start, end, price } = baseValues('priceBand', band);
  return { days: band.weekdays, startHour: start / SECONDS_PER_HOUR, endHour: end / SECONDS_PER_HOUR, price };
}
