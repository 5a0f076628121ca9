import { bestMix, type MixProduct } from '../../cost/best-mix.ts';
import { inBase } from '../../inputs/quantity.ts';
import { findById } from '../../plan/find-by-id.ts';
import type { ProductWeek } from '../../plant/report-types.ts';
import { pathOf, pathsIn } from './plan-paths.ts';
import { addUp, countedTerm, inputTerm, numbered, worked, workedTerm } from './terms.ts';
import { batchesTerm, chamberHoursTerm, onShiftTerm, phaseTerm, productName } from './throughput-workings.ts';
import type { Explanation, Term, WorkContext, Working } from './working.ts';

/** Values of a product in the program, in this order: left by a batch, chamber time, working time, batches now, most that sell. */
const PER_PRODUCT = 5;

/** More batches than any market limit: stands for a market without one. */
const NO_LIMIT = 1e9;

function leftTerm(context: WorkContext, week: ProductWeek, index: number): Term {
  const account = context.result.account.week.products.find((product) => product.productId === week.productId);
  return countedTerm(
    {
      label: `Left by a batch: ${productName(context, week.productId)}`,
      symbol: numbered('k', index),
      value: account?.contribution.perBatch ?? 0,
      dimension: 'money',
    },
    {
      what: 'Sales less ingredients, packaging, other cost and its part of energy, upkeep and paid work, of its batches of a week ÷ their number.',
      inputs: pathsIn(pathOf(context.plan, 'products', week.productId), [
        'price',
        'wetCost',
        'packaging',
        'otherPerBatch',
      ]),
    },
  );
}

function timeTerms(context: WorkContext, week: ProductWeek, index: number): Term[] {
  const name = productName(context, week.productId);
  const account = context.result.account.week.products.find((product) => product.productId === week.productId);
  const hands = (account?.resources.crew ?? 0) / week.batches;
  const what = 'Mean over its batches that ended in the measured weeks.';
  return [
    countedTerm(
      {
        label: `Chamber hours of a batch: ${name}`,
        symbol: numbered('t', index),
        value: week.cycleTime,
        dimension: 'time',
      },
      { what },
    ),
    countedTerm(
      { label: `Working hours of a batch: ${name}`, symbol: numbered('h', index), value: hands, dimension: 'time' },
      { what },
    ),
  ];
}

/** Most batches of a product that the market takes in a week. */
function limitTerm(context: WorkContext, week: ProductWeek, index: number): Term {
  const { plan } = context;
  const product = findById(plan.products, week.productId, 'product');
  const path = pathOf(plan, 'products', week.productId);
  const dry = week.dryOut / week.batches;
  const named = {
    label: `Batches that sell: ${product.name}`,
    symbol: numbered('m', index),
    dimension: 'count',
  } as const;
  if (product.weeklyDemand === null || dry <= 0) {
    return { ...named, value: NO_LIMIT, origin: { kind: 'fixed', why: 'The market takes all that is made.' } };
  }
  const demand = inBase(product.weeklyDemand, 'massPerWeek');
  const yielded = inBase(product.saleableYield, 'fraction');
  const made = countedTerm(
    { label: 'Dried product of a batch', symbol: 'd', value: dry, dimension: 'mass' },
    { what: 'Dried product of a week ÷ batches of a week.' },
  );
  return workedTerm({ ...named, value: demand / yielded / dry }, () =>
    worked(
      'demand a week ÷ share fit for sale ÷ dried product of a batch',
      'w ÷ y ÷ d',
      [inputTerm(plan, `${path}.weeklyDemand`, 'w'), inputTerm(plan, `${path}.saleableYield`, 'y'), made],
      ([w = 0, y = 1, d = 1]) => w / y / d,
    ),
  );
}

function productTerms(context: WorkContext, week: ProductWeek, index: number): Term[] {
  return [
    leftTerm(context, week, index),
    ...timeTerms(context, week, index),
    batchesTerm(context, week, numbered('b', index)),
    limitTerm(context, week, index),
  ];
}

/** Chamber hours but for those waited to be loaded, which another mix would not save. */
function chamberTimeTerm(context: WorkContext): Term {
  const terms = [
    chamberHoursTerm(context, 'T'),
    phaseTerm(context, 'waitingToLoad', 'a'),
    phaseTerm(context, 'waitingForFreezer', 'f'),
  ];
  const hours = ([T = 0, a = 0, f = 0]: readonly number[]) => Math.max(0, T - a - f);
  const value = hours(terms.map((term) => term.value));
  return workedTerm({ label: 'Chamber hours there are', symbol: 'C', value, dimension: 'timePerWeek' }, () =>
    worked('all chamber hours − waiting to be loaded − waiting for the freezer', 'T − a − f', terms, hours),
  );
}

/** The program's answer from the values of the terms. */
function solved([chambers = 0, crew = 0, ...values]: readonly number[]) {
  const products = Array.from({ length: values.length / PER_PRODUCT }, (_, k): MixProduct & { now: number } => {
    const [left = 0, time = 0, hands = 0, now = 0, most = 0] = values.slice(PER_PRODUCT * k, PER_PRODUCT * (k + 1));
    const uses = { chambers: time, crew: hands };
    return { productId: String(k), contribution: left, uses, demand: most >= NO_LIMIT ? null : most, now };
  });
  const outcome = bestMix(products, { chambers, crew });
  const present = addUp(products.map(({ contribution, now }) => contribution * now));
  return outcome.kind === 'best' ? { ...outcome, gain: outcome.contribution - present } : null;
}

function programWorking(
  context: WorkContext,
  formula: string,
  symbols: string,
  figure: (answer: NonNullable<ReturnType<typeof solved>>) => number,
): Explanation {
  if (!context.result.bestMix) {
    return { kind: 'none', why: 'Nothing is made, or nothing holds the best mix back.' };
  }
  const made = context.result.plant.products.filter((week) => week.batches > 0);
  const terms = [
    chamberTimeTerm(context),
    onShiftTerm(context, 'S'),
    ...made.flatMap((week, k) => productTerms(context, week, k + 1)),
  ];
  const compute = (values: readonly number[]) => {
    const answer = solved(values);
    return answer ? figure(answer) : 0;
  };
  const working: Working = worked(formula, symbols, terms, compute);
  return working;
}

export function bestMixGainWorking(context: WorkContext): Explanation {
  return programWorking(
    context,
    'most that batches x of each product can leave within chamber hours, working hours and what sells − what the batches of now leave',
    'largest Σ(k × x) with Σ(t × x) ≤ C, Σ(h × x) ≤ S, x ≤ m − Σ(k × b)',
    (answer) => answer.gain,
  );
}

/** @param resource whose hours are valued */
export function worthOfHourWorking(resource: 'chambers' | 'crew'): (context: WorkContext) => Explanation {
  const words = resource === 'chambers' ? 'chamber hour' : 'working hour';
  return (context) =>
    programWorking(
      context,
      `what one ${words} more would add to the most that can be left`,
      `change of largest Σ(k × x) for one hour more of ${resource === 'chambers' ? 'C' : 'S'}`,
      (answer) => answer.worthOfHour[resource] ?? 0,
    );
}
