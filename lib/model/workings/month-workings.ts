import { WEEKS_PER_MONTH } from '../../cost/month-length.ts';
import type { Cents } from '../../finance/cents.ts';
import { fromCents } from '../../finance/cents.ts';
import { findById } from '../../plan/find-by-id.ts';
import type { ProductTrade } from '../monthly-trade.ts';
import type { ScenarioResult } from '../scenario-result.ts';
import { pathOf, pathsIn } from './plan-paths.ts';
import { addUp, bookedTerm, inputTerm, numbered, summed, sumWorking, worked, workedTerm } from './terms.ts';
import type { Term, WorkContext, Working } from './working.ts';

/** Rounded to whole cents, as amounts are booked; halves away from zero. */
export function toTheCent(amount: number): number {
  return fromCents(Math.sign(amount) * Math.round(Math.abs(amount) * 100) + 0);
}

/** A shop's months: of the scenario, or of today. */
export interface Months {
  readonly context: WorkContext;
  readonly result: ScenarioResult;
  /** In words, where two shops are told apart. */
  readonly whose: string;
}

export function ownMonths(context: WorkContext): Months {
  return { context, result: context.result, whose: context.scenario.name };
}

export function todayMonths(context: WorkContext): Months {
  return { context, result: context.today, whose: context.today.name };
}

/** "month 7" for index 6, as people count. */
export function monthName(index: number): string {
  return `month ${index + 1}`;
}

function product({ context }: Months, trade: ProductTrade) {
  return findById(context.plan.products, trade.productId, 'product');
}

function capacityTerm(months: Months, trade: ProductTrade, month: number): Term {
  const { name } = product(months, trade);
  return bookedTerm(
    {
      label: `What can be made: ${name}`,
      symbol: 'c',
      value: trade.volumes[month]?.capacity ?? 0,
      dimension: 'mass',
    },
    {
      what: `Dried product of a simulated week of the way the shop runs in ${monthName(month)}, what is newly bought coming up to speed, × open weeks × share of time in order, failing pumps taken off, × share fit for sale.`,
      inputs: ['site.closedWeeks', 'site.availability', 'site.rampMonths', 'site.rampStart'],
    },
  );
}

function demandTerm(months: Months, trade: ProductTrade, month: number): Term | null {
  const demand = trade.volumes[month]?.demand ?? null;
  if (demand === null) return null;
  const path = pathOf(months.context.plan, 'products', trade.productId);
  return bookedTerm(
    { label: `What the market takes: ${product(months, trade).name}`, symbol: 'd', value: demand, dimension: 'mass' },
    {
      what: `Demand a week × ${WEEKS_PER_MONTH.toFixed(3)} weeks in a month × growth up to ${monthName(month)} × weight of its season.`,
      inputs: pathsIn(path, ['weeklyDemand', 'growth']),
    },
  );
}

function soldTerm(months: Months, trade: ProductTrade, month: number): Term {
  const { plan } = months.context;
  const { name, unsold } = product(months, trade);
  const volume = trade.volumes[month];
  const named = { label: `Sold: ${name}`, symbol: 'k', value: volume?.sold ?? 0, dimension: 'mass' } as const;
  const demand = demandTerm(months, trade, month);
  const capacity = capacityTerm(months, trade, month);
  if (unsold === 'keep') {
    return bookedTerm(named, {
      what: `The smaller of what the market takes in ${monthName(month)} and what lies in store or is made.`,
      inputs: pathsIn(pathOf(plan, 'products', trade.productId), ['weeklyDemand', 'growth', 'unsold', 'mostKept']),
    });
  }
  return workedTerm(named, () =>
    demand === null
      ? sumWorking('all that can be made: the market takes it', [capacity])
      : worked(
          'the smaller of what can be made and what the market takes',
          'smaller of c and d',
          [capacity, demand],
          (values) => Math.min(...values),
        ),
  );
}

/** A sum of some terms, booked in whole cents. */
function bookedSum(formula: string, terms: readonly Term[], sign = 1): Working {
  const symbols = terms.length === 0 ? '0' : `${sign < 0 ? '−(' : ''}${summed(terms)}${sign < 0 ? ')' : ''}`;
  return worked(`${formula}, to the cent`, symbols, terms, (values) => toTheCent(sign * addUp(values)));
}

function revenueWorking(months: Months, month: number): Working {
  const { plan } = months.context;
  const terms = months.result.trade.products.map((trade, k) => {
    const { name } = product(months, trade);
    const price = inputTerm(plan, `${pathOf(plan, 'products', trade.productId)}.price`, 'p');
    const sold = soldTerm(months, trade, month);
    const named = { label: `Sales: ${name}`, symbol: numbered('s', k + 1), value: sold.value * price.value };
    return workedTerm({ ...named, dimension: 'money' }, () =>
      worked('weight sold × price', 'k × p', [sold, price], ([weight = 0, p = 0]) => weight * p),
    );
  });
  return bookedSum('sales of each product, added up', terms);
}

function variableWorking(months: Months, month: number): Working {
  const { plan } = months.context;
  const terms = months.result.trade.products.map((trade, k) =>
    bookedTerm(
      {
        label: `Running cost: ${product(months, trade).name}`,
        symbol: numbered('v', k + 1),
        value: trade.variableCosts[month] ?? 0,
        dimension: 'money',
      },
      {
        what: `What is made in ${monthName(month)} × the week’s running cost of a kilogram – ingredients, packaging, energy, oil and upkeep, paid work –, booked when it is sold.`,
        inputs: [
          ...pathsIn(pathOf(plan, 'products', trade.productId), ['wetCost', 'trimLoss', 'packaging', 'otherPerBatch']),
          'site.electricityPrice',
          'crew.wage',
        ],
      },
    ),
  );
  return bookedSum('− running cost of each product, added up', terms, -1);
}

function fixedWorking(months: Months, month: number): Working {
  const fixed = bookedTerm(
    {
      label: 'Standing cost',
      symbol: 'f',
      value: months.result.trade.fixedCosts[month] ?? 0,
      dimension: 'money',
    },
    {
      what: 'Rent and the like, maintenance, demand and fixed charges of electricity, guaranteed wages, and what failing pumps take in a mean month.',
      inputs: ['site.rentAndFixed', 'site.demandCharge', 'site.electricityFixed', 'crew.wage'],
    },
  );
  return bookedSum('− standing cost', [fixed], -1);
}

type EarningsLine = 'revenue' | 'variableCosts' | 'fixedCosts';

const EARNINGS: readonly (readonly [EarningsLine, string, string, (months: Months, month: number) => Working])[] = [
  ['revenue', 'Sales', 's', revenueWorking],
  ['variableCosts', 'Running cost', 'v', variableWorking],
  ['fixedCosts', 'Standing cost', 'f', fixedWorking],
];

function booked(months: Months, line: EarningsLine | 'ebitda', month: number): number {
  const cents: readonly Cents[] = months.result.finance.statements.income[line];
  return fromCents(cents[month] ?? 0);
}

/** Earnings of one month: sales less running and standing cost. */
export function earningsTerm(months: Months, month: number, symbol: string): Term {
  const label = `Earned in ${monthName(month)}, ${months.whose}`;
  return workedTerm({ label, symbol, value: booked(months, 'ebitda', month), dimension: 'money' }, () =>
    bookedSum(
      'sales + running cost + standing cost, costs being negative',
      EARNINGS.map(([line, name, letter, work]) =>
        workedTerm({ label: name, symbol: letter, value: booked(months, line, month), dimension: 'money' }, () =>
          work(months, month),
        ),
      ),
    ),
  );
}
