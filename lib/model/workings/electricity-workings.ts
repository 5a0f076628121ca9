import { WEEKS_PER_MONTH } from '../../cost/month-length.ts';
import type { EnergyWeek } from '../../plant/report-types.ts';
import { chamberInputs, DRYING_LAWS } from './counted-inputs.ts';
import { pathOf } from './plan-paths.ts';
import { countedTerm, fixedTerm, inputTerm, numbered, sumWorking, worked, workedTerm } from './terms.ts';
import { peakPowerTerm } from './vacuum-workings.ts';
import type { Term, WorkContext, Working } from './working.ts';

const CONSUMERS: Readonly<Record<keyof EnergyWeek, string>> = {
  heaters: 'Shelf heaters',
  refrigeration: 'Refrigeration',
  pumps: 'Vacuum pumps',
  freezer: 'Freezer',
  defrost: 'Defrosting',
  controls: 'Controls',
};

function consumerInputs(context: WorkContext, consumer: keyof EnergyWeek): string[] {
  const { plan, scenario } = context;
  switch (consumer) {
    case 'heaters':
      return chamberInputs(context, ['heaterPower']);
    case 'refrigeration':
      return chamberInputs(context, ['compressorPower']);
    case 'defrost':
      return chamberInputs(context, ['defrostPower', 'defrostTime']);
    case 'controls':
      return chamberInputs(context, ['controlsPower']);
    case 'pumps':
      return [`${pathOf(plan, 'pumps', scenario.pump)}.power`];
    case 'freezer':
      return plan.freezer ? ['freezer.power'] : [];
  }
}

const WEEKS: Term = fixedTerm(
  { label: 'Weeks in a month', symbol: 'm', value: WEEKS_PER_MONTH, dimension: 'count' },
  '365.25 days ÷ 12 months ÷ 7 days.',
);

/** Energy that one kind of consumer takes in a week. */
function consumerTerm(context: WorkContext, consumer: keyof EnergyWeek, symbol: string): Term {
  const value = context.result.plant.energy[consumer];
  return countedTerm(
    { label: CONSUMERS[consumer], symbol, value, dimension: 'energy' },
    {
      what:
        consumer === 'heaters'
          ? 'Heat that the shelves give the loads in every step of the simulation, added up over the measured weeks and divided by their number.'
          : 'Draw × time it runs in the measured weeks, divided by their number.',
      sources: consumer === 'heaters' ? DRYING_LAWS : [],
      inputs: consumerInputs(context, consumer),
    },
  );
}

/** Energy of the vacuum pumps in a week. */
export function pumpEnergyTerm(context: WorkContext, symbol: string): Term {
  return consumerTerm(context, 'pumps', symbol);
}

function energyTerm(context: WorkContext): Term {
  const consumers = Object.keys(CONSUMERS) as (keyof EnergyWeek)[];
  const terms = consumers.map((consumer, k) => consumerTerm(context, consumer, numbered('e', k + 1)));
  const value = Object.values(context.result.plant.energy).reduce((sum, part) => sum + part, 0);
  return workedTerm({ label: 'Energy a week', symbol: 'E', value, dimension: 'energy' }, () =>
    sumWorking('energy of everything that draws current', terms),
  );
}

const KILOWATT_HOUR: Term = fixedTerm(
  { label: 'A kilowatt-hour', symbol: 'k', value: 3.6e6, dimension: 'energy' },
  'A thousand watts for 3,600 seconds.',
);

const KILOWATT: Term = fixedTerm(
  { label: 'A kilowatt', symbol: 'k', value: 1000, dimension: 'power' },
  'Demand is charged by the kilowatt.',
);

function demandWorking(context: WorkContext): Working {
  return worked(
    'highest quarter of an hour in kilowatts × demand charge a month ÷ weeks in a month',
    'P ÷ k × d ÷ m',
    [peakPowerTerm(context, 'P'), KILOWATT, inputTerm(context.plan, 'site.demandCharge', 'd'), WEEKS],
    ([P = 0, k = 1, d = 0, m = 1]) => ((P / k) * d) / m,
  );
}

function fixedWorking({ plan }: WorkContext): Working {
  return worked(
    'fixed charge a month ÷ weeks in a month',
    'f ÷ m',
    [inputTerm(plan, 'site.electricityFixed', 'f'), WEEKS],
    ([f = 0, m = 1]) => f / m,
  );
}

/** The one price of the site, or the mean of all prices by the hour. */
export function priceTerm({ plan, result }: WorkContext): Term {
  const { priceBands } = plan.site;
  if (priceBands.length === 0) return inputTerm(plan, 'site.electricityPrice', 'p');
  const value = result.account.electricity.meanPrice;
  return countedTerm(
    { label: 'Mean price', symbol: 'p', value, dimension: 'moneyPerEnergy' },
    {
      what: 'The price of every quarter of an hour in a typical week, each weighed by the power drawn in it.',
      inputs: ['site.electricityPrice', ...priceBands.map((_, k) => `site.priceBands.${k}.price`)],
    },
  );
}

function chargeWorking(context: WorkContext): Working {
  return worked(
    'energy a week in kilowatt-hours × price',
    'E ÷ k × p',
    [energyTerm(context), KILOWATT_HOUR, priceTerm(context)],
    ([E = 0, k = 1, p = 0]) => (E / k) * p,
  );
}

function moneyTerm(label: string, symbol: string, value: number, work: () => Working): Term {
  return workedTerm({ label, symbol, value, dimension: 'money' }, work);
}

/** Energy charge of a week: it rises and falls with what is made. */
export function energyChargeTerm(context: WorkContext, symbol: string): Term {
  const { energyCharge } = context.result.account.electricity;
  return moneyTerm('Energy charge a week', symbol, energyCharge, () => chargeWorking(context));
}

/** Demand and fixed charges of a week: they run on whatever is made. */
export function standingChargeTerms(context: WorkContext, symbols: readonly [string, string]): readonly [Term, Term] {
  const { demandCharge, fixedCharge } = context.result.account.electricity;
  return [
    moneyTerm('Demand charge a week', symbols[0], demandCharge, () => demandWorking(context)),
    moneyTerm('Fixed charge a week', symbols[1], fixedCharge, () => fixedWorking(context)),
  ];
}

/** Electricity of a week, demand and fixed charges included. */
export function electricityTerm(context: WorkContext, symbol: string): Term {
  return moneyTerm('Electricity a week', symbol, context.result.account.electricity.total, () =>
    sumWorking('energy + demand charge + fixed charge', [
      energyChargeTerm(context, 'c'),
      ...standingChargeTerms(context, ['d', 'f']),
    ]),
  );
}
