import { perWeek } from './month-length.ts';
import { requireAmounts } from './require-amounts.ts';
import { meanEnergyPrice, type TariffBand } from './tariff.ts';

const JOULES_PER_KILOWATT_HOUR = 3.6e6;

/** What the supplier charges. An average price per kWh from a bill already holds the other two: leave them at 0 then. */
export interface Tariff {
  /** Price outside every band [money/kWh]. */
  readonly energyPrice: number;
  /** Hours at another price; the first that matches counts. */
  readonly bands: readonly TariffBand[];
  /** Charge on the month's highest quarter-hour mean power [money/(kW·month)]. */
  readonly demandCharge: number;
  /** [money/month] */
  readonly fixedPerMonth: number;
}

export interface ElectricityTerms {
  /** Energy by consumer [J/week]. */
  readonly energy: Readonly<Record<string, number>>;
  /** Highest quarter-hour mean power [W]. */
  readonly peakPower: number;
  /** Power by quarter hour from Monday 00:00 [W], 672 values; needed only where the tariff has bands, else empty. */
  readonly profile: readonly number[];
  readonly tariff: Tariff;
}

/** Cost of electricity; all costs are positive. */
export interface ElectricityCost {
  /** [kWh/week] */
  readonly energy: number;
  /** Mean price of the energy used [money/kWh]. */
  readonly meanPrice: number;
  /** Energy charge by consumer [money/week]. */
  readonly byConsumer: Readonly<Record<string, number>>;
  /** Energy charge of all consumers [money/week]: rises and falls with what is made. */
  readonly energyCharge: number;
  /** Demand charge [money/week]: the same however many batches follow the one that made the peak. */
  readonly demandCharge: number;
  /** [money/week] */
  readonly fixedCharge: number;
  /** [money/week] */
  readonly total: number;
}

/**
 * Electricity [money/week]: Σ kWh·price + peak kW·demand charge + fixed charge, monthly charges by 365.25/12/7 weeks.
 * Consumers share the mean price of the week; who ran in the dear hours is not told apart.
 * Throws RangeError on a negative amount.
 */
export function electricityCost(terms: ElectricityTerms): ElectricityCost {
  const { tariff, energy, peakPower } = terms;
  requireAmounts({ ...energy, peakPower, energyPrice: tariff.energyPrice, demandCharge: tariff.demandCharge });
  requireAmounts({ fixedPerMonth: tariff.fixedPerMonth });
  const meanPrice = meanEnergyPrice(terms.profile, tariff.energyPrice, tariff.bands);
  const byConsumer = Object.fromEntries(
    Object.entries(energy).map(([name, joules]) => [name, (joules / JOULES_PER_KILOWATT_HOUR) * meanPrice]),
  );
  const used = Object.values(energy).reduce((sum, joules) => sum + joules, 0) / JOULES_PER_KILOWATT_HOUR;
  const energyCharge = used * meanPrice;
  const demandCharge = perWeek((peakPower / 1000) * tariff.demandCharge);
  const fixedCharge = perWeek(tariff.fixedPerMonth);
  const total = energyCharge + demandCharge + fixedCharge;
  return { energy: used, meanPrice, byConsumer, energyCharge, demandCharge, fixedCharge, total };
}
