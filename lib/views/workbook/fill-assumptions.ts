import type { BasisPath, LenderBasis } from '../../model/lender-basis-types.ts';
import type { Plan } from '../../plan/plan-types.ts';
import type { AssumptionSheet } from './assumption-sheet.ts';
import { loanPath, pathOf } from './plan-paths.ts';

const PRODUCT = [
  'price',
  'saleableYield',
  'wetCost',
  'trimLoss',
  'packaging',
  'otherPerBatch',
  'weeklyDemand',
  'growth',
  'unsold',
];
const SHOP = ['electricityPrice', 'demandCharge', 'electricityFixed', 'rentAndFixed', 'closedWeeks', 'availability'];
const CREW = ['wage', 'onCost', 'guaranteed', 'ownerHours', 'ownerRate'];
const CHAMBER = ['price', 'installation', 'salvage', 'maintenance'];
const PUMP = ['price', 'salvage', 'oilVolume', 'oilPrice', 'filterCost', 'rebuildCost', 'repairBill'];
const WORKS = ['manifoldPerChamber', 'electricalPerChamber', 'delivery', 'contingency'];
const MONEY = ['openingCash', 'receivableDays', 'stockDays', 'payableDays'];
const TAX = ['taxRate', 'lossOffset', 'depreciationMethod', 'expensedShare'];
const YARDSTICKS = ['discountRate', 'reinvestRate', 'dscrLine'];
const LOAN = ['rate', 'term', 'graceMonths', 'interestOnlyMonths', 'fee'];

const SETTLED_EVERY = { monthly: 1, quarterly: 3, yearly: 12 } as const;

function pathsOf({ today, path }: LenderBasis): readonly BasisPath[] {
  return path ? [today, path] : [today];
}

/** Ids of a kind of thing that is owned, bought or run on the way, in the order of the plan. */
function used(plan: Plan, basis: LenderBasis, list: 'chambers' | 'pumps' | 'hoses', kind: string): readonly string[] {
  const keys = new Set([
    ...pathsOf(basis).flatMap(({ holdings }) => holdings.map((holding) => holding.key)),
    ...basis.stages.flatMap(({ items }) => items.map((item) => item.key)),
  ]);
  const run = new Set([
    ...basis.weeks.flatMap(({ pumps, chambers }) => [
      ...pumps.map((pump) => pump.pumpId),
      ...chambers.map((chamber) => chamber.chamberId),
    ]),
    ...pathsOf(basis).flatMap(({ phases }) => phases.map((phase) => phase.pumpId)),
  ]);
  return plan[list].map(({ id }) => id).filter((id) => keys.has(`${kind} ${id}`) || (list !== 'hoses' && run.has(id)));
}

function fillProducts(sheet: AssumptionSheet, plan: Plan, basis: LenderBasis): void {
  const made = new Set(pathsOf(basis).flatMap(({ capacity }) => capacity.map(({ productId }) => productId)));
  sheet.heading('Products and market');
  for (const { id, unsold } of plan.products.filter((product) => made.has(product.id))) {
    sheet.put(pathOf(plan, 'products', id), unsold === 'keep' ? [...PRODUCT, 'mostKept'] : PRODUCT, id);
  }
}

function fillRunning(sheet: AssumptionSheet, plan: Plan): void {
  sheet.heading('Running the shop');
  sheet.put('site', SHOP);
  for (const [k, band] of plan.site.priceBands.entries())
    sheet.put(`site.priceBands.${k}`, ['price'], `band-${band.id}`);
  sheet.put('crew', CREW);
}

function fillThings(sheet: AssumptionSheet, plan: Plan, basis: LenderBasis): void {
  sheet.heading('Machines and works');
  for (const id of used(plan, basis, 'chambers', 'chamber'))
    sheet.put(pathOf(plan, 'chambers', id), CHAMBER, `chamber-${id}`);
  for (const id of used(plan, basis, 'pumps', 'pump')) sheet.put(pathOf(plan, 'pumps', id), PUMP, `pump-${id}`);
  for (const id of used(plan, basis, 'hoses', 'hose')) sheet.put(pathOf(plan, 'hoses', id), ['price'], `hose-${id}`);
  if (plan.freezer) sheet.put('freezer', ['price', 'salvage'], 'freezer');
  sheet.put('site', WORKS);
  for (const { scenarioId } of basis.stages)
    sheet.put(pathOf(plan, 'scenarios', scenarioId), ['extraCapital'], scenarioId);
}

function fillFinance(sheet: AssumptionSheet, plan: Plan, basis: LenderBasis): void {
  const { taxSettled } = plan.financing;
  sheet.heading('Money in hand and tied up');
  sheet.put('financing', MONEY);
  sheet.heading('Tax');
  sheet.put('financing', TAX);
  if (basis.writeOffTable === null) sheet.put('financing', ['depreciationLife']);
  sheet.choice('financing.taxSettled', 'tax_every', SETTLED_EVERY[taxSettled], 'months: 1, 3 or 12');
  sheet.heading('Yardsticks');
  sheet.put('financing', YARDSTICKS);
}

const OF_BASIS = { share: ['share', 'startMonth'], amount: ['amount', 'startMonth'], running: ['amount'] } as const;

function fillLoans(sheet: AssumptionSheet, plan: Plan): void {
  sheet.heading('Loans');
  for (const { id, basis } of plan.financing.loans)
    sheet.put(loanPath(plan, id), [...OF_BASIS[basis], ...LOAN], `loan-${id}`);
}

/** Puts every value of the plan that the projection reckons with on the sheet of assumptions. */
export function fillAssumptions(sheet: AssumptionSheet, plan: Plan, basis: LenderBasis): void {
  fillProducts(sheet, plan, basis);
  fillRunning(sheet, plan);
  fillThings(sheet, plan, basis);
  fillFinance(sheet, plan, basis);
  fillLoans(sheet, plan);
}
