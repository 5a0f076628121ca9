import type { BatchRecord } from '../../plant/report-types.ts';
import { WORKING_PHASES } from './phase-words.ts';
import { saleableWeekTerm } from './product-money-workings.ts';
import { addUp, countedTerm, numbered, worked, workedTerm } from './terms.ts';
import { chamberUseWorking, dryWorking, productName } from './throughput-workings.ts';
import type { Term, WorkContext, Working } from './working.ts';

function workingTime({ phases }: BatchRecord): number {
  return addUp(WORKING_PHASES.map((phase) => phases[phase] ?? 0));
}

/** Quickest and total working time of one product's batches, and their number. */
function productTerms(context: WorkContext, productId: string, index: number): Term[] {
  const times = context.result.plant.batchRecords.filter((batch) => batch.productId === productId).map(workingTime);
  if (times.length === 0) return [];
  const name = productName(context, productId);
  const what =
    'Loading, freezing, pump-down, drying, unloading, defrosting and cleaning; waiting and holding left out.';
  return [
    countedTerm(
      { label: `Quickest batch: ${name}`, symbol: numbered('q', index), value: Math.min(...times), dimension: 'time' },
      { what },
    ),
    countedTerm(
      { label: `Batches that ended: ${name}`, symbol: numbered('n', index), value: times.length, dimension: 'count' },
      { what: 'Batches whose chamber was clean again within the measured weeks.' },
    ),
    countedTerm(
      {
        label: `Working time of all of them: ${name}`,
        symbol: numbered('t', index),
        value: addUp(times),
        dimension: 'time',
      },
      { what },
    ),
  ];
}

/** Share of working time that would be needed if every batch were as quick as the quickest of its product. */
function performance(values: readonly number[]): number {
  const products = Array.from({ length: values.length / 3 }, (_, k) => values.slice(3 * k, 3 * k + 3));
  const all = addUp(products.map(([, , t = 0]) => t));
  return all > 0 ? addUp(products.map(([q = 0, n = 0]) => q * n)) / all : 1;
}

function performanceTerm(context: WorkContext): Term {
  const terms = context.result.plant.products.flatMap((week, k) => productTerms(context, week.productId, k + 1));
  const value = performance(terms.map((term) => term.value));
  return workedTerm(
    { label: 'How close batches come to the quickest', symbol: 'p', value, dimension: 'fraction' },
    () =>
      worked(
        'quickest batch × batches ÷ working time of all of them, added up over products',
        'Σ(q × n) ÷ Σt',
        terms,
        performance,
      ),
  );
}

export function effectivenessWorking(context: WorkContext): Working {
  const { plant } = context.result;
  const use = workedTerm(
    { label: 'Chambers at work', symbol: 'a', value: plant.utilisation.chambers, dimension: 'fraction' },
    () => chamberUseWorking(context),
  );
  const made = workedTerm(
    { label: 'Dried product a week', symbol: 'd', value: plant.dryOut, dimension: 'massPerWeek' },
    () => dryWorking(context),
  );
  return worked(
    'chambers at work × how close batches come to the quickest of their kind × fit for sale ÷ made',
    'a × p × k ÷ d',
    [use, performanceTerm(context), saleableWeekTerm(context, 'k'), made],
    ([a = 0, p = 0, k = 0, d = 0]) => (d > 0 && a > 0 ? a * p * Math.min(1, k / d) : 0),
  );
}
