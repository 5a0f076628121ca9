const QUARTERS_PER_DAY = 96;

/** Hours of the week at a price of their own. */
export interface TariffBand {
  /** 0 = Monday … 6 = Sunday. */
  readonly days: readonly number[];
  /** Hours after midnight, 0–24; a band that ends before it starts runs over midnight into the next day. */
  readonly startHour: number;
  readonly endHour: number;
  /** [money/kWh] */
  readonly price: number;
}

/**
 * Mean price of the energy used over a week [money/kWh], each quarter hour weighed by its power; the basic price when
 * there are no bands or nothing is used.
 * Throws RangeError when bands are given without a profile of 672 quarter hours.
 * @param profile power by quarter hour from Monday 00:00 [W]
 * @param basicPrice outside every band [money/kWh]
 * @param bands the first that matches counts
 */
export function meanEnergyPrice(profile: readonly number[], basicPrice: number, bands: readonly TariffBand[]): number {
  if (bands.length === 0) return basicPrice;
  if (profile.length !== 7 * QUARTERS_PER_DAY) {
    throw new RangeError(`a tariff with bands needs 672 quarter hours of power, got ${profile.length}`);
  }
  const used = profile.reduce((sum, power) => sum + power, 0);
  if (!(used > 0)) return basicPrice;
  return profile.reduce((sum, power, quarter) => sum + power * priceAt(quarter, basicPrice, bands), 0) / used;
}

/** Price in a quarter hour of the week [money/kWh]. @param quarter 0 = Monday 00:00 to 00:15 */
function priceAt(quarter: number, basicPrice: number, bands: readonly TariffBand[]): number {
  const day = Math.floor(quarter / QUARTERS_PER_DAY);
  const hour = (quarter % QUARTERS_PER_DAY) / 4;
  return bands.find((band) => isInBand(day, hour, band))?.price ?? basicPrice;
}

function isInBand(day: number, hour: number, band: TariffBand): boolean {
  if (band.startHour <= band.endHour) {
    return band.days.includes(day) && hour >= band.startHour && hour < band.endHour;
  }
  // Over midnight: the late hours belong to the day itself, the early ones to the day before.
  const dayBefore = (day + 6) % 7;
  return (band.days.includes(day) && hour >= band.startHour) || (band.days.includes(dayBefore) && hour < band.endHour);
}
