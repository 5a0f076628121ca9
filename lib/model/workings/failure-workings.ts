import { annuityPayment } from '../../finance/annuity.ts';
import { type ExpectedFailures, expectedFailures } from '../pump-failure-expected.ts';
import { type PumpAtWork, type PumpFailureTerms, pumpFailureTerms, SECONDS_PER_YEAR } from '../pump-failure-terms.ts';
import { scenarioEquipment } from '../scenario-equipment.ts';
import { priceTerm, pumpEnergyTerm } from './electricity-workings.ts';
import { pathOf, pathsIn } from './plan-paths.ts';
import {
  addUp,
  bookedTerm,
  countedTerm,
  fixedTerm,
  inputTerm,
  numbered,
  sumWorking,
  worked,
  workedTerm,
} from './terms.ts';
import { upkeepTerm } from './upkeep-workings.ts';
import { pumpLabel, pumpTimeTerm } from './vacuum-workings.ts';
import type { Term, WorkContext, Working } from './working.ts';

function failureTerms({ plan, scenario, result }: WorkContext): PumpFailureTerms {
  return pumpFailureTerms(plan, scenario, result.plant, result.account.week);
}

const YEAR: Term = fixedTerm(
  { label: 'A year', symbol: 'y', value: SECONDS_PER_YEAR, dimension: 'time' },
  '365.25 days of 24 hours.',
);

/** Weeks of full running in a year: closures and small stoppages taken off. */
export function runningWeeksTerm({ plan }: WorkContext, symbol: string): Term {
  const week = fixedTerm(
    { label: 'A week', symbol: 'w', value: 604_800, dimension: 'time' },
    'Seven days of 24 hours.',
  );
  const terms = [YEAR, inputTerm(plan, 'site.closedWeeks', 'c'), week, inputTerm(plan, 'site.availability', 'a')];
  const weeks = ([y = 0, c = 0, w = 1, a = 0]: readonly number[]) => Math.max(0, (y - c) / w) * a;
  const value = weeks(terms.map((term) => term.value));
  return workedTerm({ label: 'Weeks of full running in a year', symbol, value, dimension: 'count' }, () =>
    worked('(year − closed time) ÷ week × share of time in order', '(y − c) ÷ w × a', terms, weeks),
  );
}

/** How often one pump would fail in a year if nothing else stood still. */
function rateTerm(context: WorkContext, pump: PumpAtWork, index: number): Term {
  const { plan, scenario, result } = context;
  const group = result.plant.groups[index];
  const label = `Failures a year of ${pumpLabel(context, index)}, were it mended at once`;
  const named = { label, symbol: numbered('λ', index + 1), value: pump.failuresPerYear, dimension: 'count' } as const;
  return workedTerm(named, () =>
    worked(
      'failures per year of running × running time a week × weeks of full running ÷ a year',
      'f × t × w ÷ y',
      [
        inputTerm(plan, `${pathOf(plan, 'pumps', scenario.pump)}.failuresPerYear`, 'f'),
        ...(group ? [pumpTimeTerm(context, group, index, 't')] : []),
        runningWeeksTerm(context, 'w'),
        YEAR,
      ],
      ([f = 0, t = 0, w = 0, y = 1]) => (f * t * w) / y,
    ),
  );
}

/** Time until it runs again: mended, or a spare put in. */
function standstillTerms({ plan, scenario }: WorkContext): Term[] {
  const path = pathOf(plan, 'pumps', scenario.pump);
  const repair = inputTerm(plan, `${path}.repairTime`, 'r');
  return scenario.sparePump === 'onShelf' ? [repair, inputTerm(plan, `${path}.swapTime`, 's')] : [repair];
}

/** A pump is never back in less than a minute. */
const SHORTEST = 60;

/** The chain of states with other rates and times. */
function failuresFrom(context: WorkContext, rates: readonly number[], times: readonly number[]): ExpectedFailures {
  const terms = failureTerms(context);
  const [repair = 0, swap] = times;
  return expectedFailures({
    ...terms,
    pumps: terms.pumps.map((pump, k) => ({ ...pump, failuresPerYear: rates[k] ?? 0 })),
    repairTime: Math.max(SHORTEST, repair),
    swapTime: swap === undefined ? null : Math.max(SHORTEST, swap),
  });
}

/** A figure of the chain of states, from the pumps' rates and the time each stands still. */
function chainWorking(
  context: WorkContext,
  formula: string,
  symbols: string,
  figure: (failures: ExpectedFailures) => number,
): Working {
  const rates = failureTerms(context).pumps.map((pump, k) => rateTerm(context, pump, k));
  const terms = [...rates, ...standstillTerms(context)];
  return worked(formula, symbols, terms, (values) =>
    figure(failuresFrom(context, values.slice(0, rates.length), values.slice(rates.length))),
  );
}

export function failuresWorking(context: WorkContext): Working {
  return chainWorking(
    context,
    'each pump’s failures, fewer by the time it stands still, added up: λ ÷ (1 + λ × standstill) where each is mended at once, a chain of states where a spare is shared',
    'Σ λ ÷ (1 + λ × standstill)',
    (failures) => failures.failures,
  );
}

export function downtimeWorking(context: WorkContext): Working {
  return chainWorking(
    context,
    'failures × time until the pump runs again, more than one at a time counted by a chain of states',
    'failures × standstill',
    (failures) => failures.downtime,
  );
}

function countedOf(
  context: WorkContext,
  label: string,
  symbol: string,
  index: number,
  value: number,
  what: string,
): Term {
  const named = { label: `${label}, ${pumpLabel(context, index)}`, symbol, value, dimension: 'count' } as const;
  return countedTerm(named, { what, inputs: ['site.closedWeeks', 'site.availability'] });
}

/** Failures of each pump in a mean year and the share of the year it stands still, as the chain of states has them. */
function shareTerms(context: WorkContext, index: number): readonly [Term, Term] {
  const { pumps } = failureTerms(context);
  const only = (pick: 'failures' | 'stopped', values: readonly number[]) => {
    const rates = values.slice(0, pumps.length);
    const times = values.slice(pumps.length);
    const all = failuresFrom(context, rates, times);
    const share = failureShare(rates, all, index);
    return pick === 'failures' ? share * all.failures : (share * all.downtime) / SECONDS_PER_YEAR;
  };
  const terms = [...pumps.map((pump, k) => rateTerm(context, pump, k)), ...standstillTerms(context)];
  const values = terms.map((term) => term.value);
  const make = (label: string, symbol: string, pick: 'failures' | 'stopped', dimension: 'count' | 'fraction') =>
    workedTerm({ label: `${label}, ${pumpLabel(context, index)}`, symbol, value: only(pick, values), dimension }, () =>
      worked(
        pick === 'failures'
          ? 'its part of all failures, as often as it would fail alone'
          : 'its part of all failures × time that pumps are stopped ÷ a year',
        pick === 'failures' ? 'λ ÷ (1 + λ × standstill)' : 'failures × standstill ÷ year',
        terms,
        (inner) => only(pick, inner),
      ),
    );
  return [
    make('Failures a year', numbered('f', index + 1), 'failures', 'count'),
    make('Share of the year stopped', numbered('q', index + 1), 'stopped', 'fraction'),
  ];
}

/** Share of all failures that falls to one pump. */
function failureShare(rates: readonly number[], all: ExpectedFailures, index: number): number {
  const standstill = all.failures > 0 ? all.downtime / SECONDS_PER_YEAR / all.failures : 0;
  const parts = rates.map((rate) => rate / (1 + rate * standstill));
  const whole = addUp(parts);
  return whole > 0 ? (parts[index] ?? 0) / whole : 0;
}

function spoiledShareTerm({ plan, scenario }: WorkContext): Term {
  return inputTerm(plan, `${pathOf(plan, 'pumps', scenario.pump)}.spoiledShare`, 'p');
}

/** Loads of one pump that are lost in a year, as they are spoiled under vacuum. */
function spoiledLoads(context: WorkContext, index: number): readonly Term[] {
  const pump = failureTerms(context).pumps[index];
  const [failures] = shareTerms(context, index);
  const under = countedOf(
    context,
    'Loads under vacuum while it runs',
    numbered('u', index + 1),
    index,
    pump?.loadsUnderVacuum ?? 0,
    'Time of its chambers from pump-down until air is let in ÷ its running time, in the measured weeks.',
  );
  return [failures, under];
}

export function lostBatchesWorking(context: WorkContext): Working {
  const { pumps } = failureTerms(context);
  const share = spoiledShareTerm(context);
  const terms = pumps.flatMap((pump, index) => {
    const [, stopped] = shareTerms(context, index);
    const made = countedOf(
      context,
      'Batches a year',
      numbered('b', index + 1),
      index,
      pump.batchesPerYear,
      'Batches of an average week × its chambers’ part of what is made × weeks of full running in a year.',
    );
    return [...spoiledLoads(context, index), made, stopped];
  });
  return worked(
    'failures × loads under vacuum × share of them lost + batches a year × share of the year stopped, for each pump, added up',
    'Σ (f × u × p + b × q)',
    [share, ...terms],
    ([p = 0, ...values]) => {
      const each = pumps.map((_, k) => {
        const [f = 0, u = 0, b = 0, q = 0] = values.slice(4 * k, 4 * k + 4);
        return f * u * p + b * q;
      });
      return addUp(each);
    },
  );
}

/** What loads that are lost under vacuum cost in a mean year. */
export function spoiledTerm(context: WorkContext, symbol: string): Term {
  const { pumps } = failureTerms(context);
  const value = context.result.failures.cost.spoiled;
  return workedTerm({ label: 'Spoiled loads a year', symbol, value, dimension: 'money' }, () => {
    const terms = pumps.flatMap((pump, index) => [
      ...spoiledLoads(context, index),
      countedTerm(
        {
          label: `Worth of a load, ${pumpLabel(context, index)}`,
          symbol: numbered('v', index + 1),
          value: pump.loadValue,
          dimension: 'money',
        },
        {
          what: 'What a load fetches less its packaging, mean over the batches that ended, weighed by their time under vacuum.',
          inputs: context.scenario.mix.flatMap((entry) =>
            pathsIn(pathOf(context.plan, 'products', entry.product), ['price', 'packaging', 'saleableYield']),
          ),
        },
      ),
    ]);
    return worked(
      'failures × loads under vacuum × share of them lost × worth of a load, for each pump, added up',
      'Σ (f × u × p × v)',
      [spoiledShareTerm(context), ...terms],
      ([p = 0, ...values]) =>
        addUp(
          pumps.map((_, k) => {
            const [f = 0, u = 0, v = 0] = values.slice(3 * k, 3 * k + 3);
            return f * u * p * v;
          }),
        ),
    );
  });
}

/** What chambers that stand idle do not bring in a mean year. */
function idleTerm(context: WorkContext, symbol: string): Term {
  const { pumps } = failureTerms(context);
  return workedTerm(
    { label: 'Idle chambers a year', symbol, value: context.result.failures.cost.idle, dimension: 'money' },
    () => {
      const terms = pumps.flatMap((pump, index) => {
        const [, stopped] = shareTerms(context, index);
        const brings = countedTerm(
          {
            label: `Sales less running cost a year, ${pumpLabel(context, index)}`,
            symbol: numbered('k', index + 1),
            value: pump.contributionPerYear,
            dimension: 'money',
          },
          {
            what: 'Sales less running cost of an average week × its chambers’ part of what is made × weeks of full running in a year.',
            inputs: ['site.closedWeeks', 'site.availability'],
          },
        );
        return [brings, stopped];
      });
      return worked(
        'sales less running cost a year × share of the year stopped, for each pump, added up',
        'Σ (k × q)',
        terms,
        (values) => addUp(pumps.map((_, k) => (values[2 * k] ?? 0) * (values[2 * k + 1] ?? 0))),
      );
    },
  );
}

/** What mending pumps costs in a mean year. */
export function repairsTerm(context: WorkContext, symbol: string): Term {
  const { plan, scenario, result } = context;
  const failures = workedTerm(
    { label: 'Failures a year', symbol: 'f', value: result.failures.failures, dimension: 'count' },
    () => failuresWorking(context),
  );
  return workedTerm({ label: 'Repairs a year', symbol, value: result.failures.cost.repairs, dimension: 'money' }, () =>
    worked(
      'failures × bill of a repair',
      'f × r',
      [failures, inputTerm(plan, `${pathOf(plan, 'pumps', scenario.pump)}.repairBill`, 'r')],
      ([f = 0, r = 0]) => f * r,
    ),
  );
}

export function failureCostWorking(context: WorkContext): Working {
  return sumWorking('spoiled loads + idle chambers + repairs', [
    spoiledTerm(context, 's'),
    idleTerm(context, 'i'),
    repairsTerm(context, 'r'),
  ]);
}

/** What one kind of pump costs a year to own. */
function owningTerm(context: WorkContext, pumpId: string, count: number, index: number): Term {
  const { plan } = context;
  const path = pathOf(plan, 'pumps', pumpId);
  const number = bookedTerm(
    { label: 'How many', symbol: 'n', value: count, dimension: 'count' },
    { what: 'Pumps that the arrangement of the scenario needs, a roughing pump and a spare included.' },
  );
  const terms = [
    number,
    inputTerm(plan, `${path}.price`, 'p'),
    inputTerm(plan, `${path}.salvage`, 's'),
    inputTerm(plan, `${path}.usefulLife`, 'l'),
    inputTerm(plan, 'financing.discountRate', 'i'),
  ];
  const cost = ([n = 0, p = 0, s = 0, l = 1, i = 0]: readonly number[]) =>
    0 - n * annuityPayment(i, l / 12, p, 0 - s * p);
  const label = `Owning: ${plan.pumps.find((pump) => pump.id === pumpId)?.name ?? pumpId}`;
  return workedTerm(
    { label, symbol: numbered('o', index + 1), value: cost(terms.map((term) => term.value)), dimension: 'money' },
    () =>
      worked(
        'number × (price spread over its life at the return wanted − what it fetches then, spread likewise)',
        'n × (p × (A/P) − s × p × (A/F))',
        terms,
        cost,
      ),
  );
}

export function pumpsPerYearWorking(context: WorkContext): Working {
  const { scenario, result } = context;
  const owning = [...scenarioEquipment(scenario).pumps].map(([id, count], k) => owningTerm(context, id, count, k));
  const failing = workedTerm(
    { label: 'Failures', symbol: 'x', value: result.failures.cost.total, dimension: 'money' },
    () => failureCostWorking(context),
  );
  const kilowattHour = fixedTerm(
    { label: 'A kilowatt-hour', symbol: 'k', value: 3.6e6, dimension: 'energy' },
    'A thousand watts for 3,600 seconds.',
  );
  return worked(
    'owning + (current at its price + oil and upkeep) a week × weeks of full running + failures',
    'o + (E ÷ k × p + u) × w + x',
    [
      pumpEnergyTerm(context, 'E'),
      kilowattHour,
      priceTerm(context),
      upkeepTerm(context, 'u'),
      runningWeeksTerm(context, 'w'),
      failing,
      ...owning,
    ],
    ([E = 0, k = 1, p = 0, u = 0, w = 0, x = 0, ...own]) => addUp(own) + ((E / k) * p + u) * w + x,
  );
}
