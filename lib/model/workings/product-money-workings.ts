import type { ProductWeek } from '../../plant/report-types.ts';
import { pathOf } from './plan-paths.ts';
import { inputTerm, numbered, sumWorking, worked, workedTerm } from './terms.ts';
import { batchesTerm, dryTerm, productName, wetTerm } from './throughput-workings.ts';
import type { Term, WorkContext, Working } from './working.ts';

/** An amount of a week, product by product. */
function eachProduct(
  context: WorkContext,
  named: { readonly label: string; readonly symbol: string; readonly value: number },
  amountOf: (productId: string) => number,
  work: (week: ProductWeek, path: string) => Working,
): Term {
  const terms = context.result.plant.products.map((week, k) => {
    const path = pathOf(context.plan, 'products', week.productId);
    const label = `${named.label}: ${productName(context, week.productId)}`;
    const symbol = numbered(named.symbol, k + 1);
    return workedTerm({ label, symbol, value: amountOf(week.productId), dimension: 'money' }, () => work(week, path));
  });
  return workedTerm({ ...named, dimension: 'money' }, () =>
    sumWorking(`${named.label.toLowerCase()}, product by product`, terms),
  );
}

function accountOf({ result }: WorkContext, productId: string) {
  return result.account.week.products.find((product) => product.productId === productId);
}

/** Food bought in a week. */
export function ingredientsTerm(context: WorkContext, symbol: string): Term {
  const { plan, result } = context;
  return eachProduct(
    context,
    { label: 'Ingredients a week', symbol, value: result.account.week.running.ingredients },
    (id) => accountOf(context, id)?.running.ingredients ?? 0,
    (week, path) =>
      worked(
        'wet food ÷ (1 − share trimmed off) × price as bought',
        'w ÷ (1 − a) × p',
        [
          wetTerm(context, week, 'w'),
          inputTerm(plan, `${path}.trimLoss`, 'a'),
          inputTerm(plan, `${path}.wetCost`, 'p'),
        ],
        ([w = 0, a = 0, p = 0]) => (w / (1 - a)) * p,
      ),
  );
}

/** Dried product that can be sold in a week. */
function saleableTerm(context: WorkContext, week: ProductWeek, path: string): Term {
  const { plan } = context;
  const value = accountOf(context, week.productId)?.saleable ?? 0;
  const label = `Fit for sale: ${productName(context, week.productId)}`;
  return workedTerm({ label, symbol: 'k', value, dimension: 'massPerWeek' }, () =>
    worked(
      'dried product × share of it that can be sold',
      'd × y',
      [dryTerm(context, week, 'd'), inputTerm(plan, `${path}.saleableYield`, 'y')],
      ([d = 0, y = 0]) => d * y,
    ),
  );
}

/** Dried product of all products that can be sold in a week. */
export function saleableWeekTerm(context: WorkContext, symbol: string): Term {
  const { products } = context.result.account.week;
  const value = products.reduce((sum, product) => sum + product.saleable, 0);
  const terms = context.result.plant.products.map((week, k) => ({
    ...saleableTerm(context, week, pathOf(context.plan, 'products', week.productId)),
    symbol: numbered('k', k + 1),
  }));
  return workedTerm({ label: 'Fit for sale a week', symbol, value, dimension: 'massPerWeek' }, () =>
    sumWorking('weight fit for sale of each product, added up', terms),
  );
}

function perSaleable(
  context: WorkContext,
  week: ProductWeek,
  path: string,
  key: 'packaging' | 'price',
  formula: string,
): Working {
  return worked(
    formula,
    'k × p',
    [saleableTerm(context, week, path), inputTerm(context.plan, `${path}.${key}`, 'p')],
    ([k = 0, p = 0]) => k * p,
  );
}

/** Bags, labels and the like of a week. */
export function packagingTerm(context: WorkContext, symbol: string): Term {
  return eachProduct(
    context,
    { label: 'Packaging a week', symbol, value: context.result.account.week.running.packaging },
    (id) => accountOf(context, id)?.running.packaging ?? 0,
    (week, path) => perSaleable(context, week, path, 'packaging', 'weight fit for sale × packaging by weight'),
  );
}

/** Sales of a week. */
export function salesTerm(context: WorkContext, symbol: string): Term {
  return eachProduct(
    context,
    { label: 'Sales a week', symbol, value: context.result.cost.salesPerWeek },
    (id) => accountOf(context, id)?.revenue ?? 0,
    (week, path) => perSaleable(context, week, path, 'price', 'weight fit for sale × price'),
  );
}

/** Liners and the like of a week. */
export function otherTerm(context: WorkContext, symbol: string): Term {
  return eachProduct(
    context,
    { label: 'Other cost a week', symbol, value: context.result.account.week.running.other },
    (id) => accountOf(context, id)?.running.other ?? 0,
    (week, path) =>
      worked(
        'batches a week × other cost per batch',
        'b × p',
        [batchesTerm(context, week, 'b'), inputTerm(context.plan, `${path}.otherPerBatch`, 'p')],
        ([b = 0, p = 0]) => b * p,
      ),
  );
}
