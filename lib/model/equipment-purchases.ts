import type { CapitalPurchase } from '../finance/capital-assets.ts';
import type { DepreciationMethod } from '../finance/depreciation.ts';
import { baseValues } from '../inputs/base-values.ts';
import type { Plan } from '../plan/plan-types.ts';
import { equipmentItems, type PurchaseItem, WORKS } from './equipment-items.ts';
import { purchaseItems, stageCapital } from './scenario-capital.ts';
import { scenarioEquipment, toBuy, todayOf } from './scenario-equipment.ts';
import type { Stage } from './scenario-stages.ts';

/** Things of one kind bought together; those that a later stage has no use for are taken out of `count`. */
interface Batch {
  readonly item: PurchaseItem;
  readonly month: number;
  count: number;
}

/** A purchase with what is bought, so that its price can be followed to the lists of the plan. */
export interface PlannedThing {
  /** Null for old equipment given in. */
  readonly item: PurchaseItem | null;
  readonly count: number;
  readonly purchase: CapitalPurchase;
}

interface TaxRules {
  readonly method: DepreciationMethod;
  readonly expensedShare: number;
}

/** Months after which works and delivery fetch nothing any more. */
const WORKS_LIFE = 1;

function taxRules(plan: Plan): TaxRules {
  const { depreciationMethod, depreciationLife, expensedShare } = baseValues('financing', plan.financing);
  if (depreciationMethod !== 'straightLine')
    return { method: { kind: 'table', table: depreciationMethod }, expensedShare };
  return { method: { kind: 'straightLine', months: Math.max(1, Math.round(depreciationLife)) }, expensedShare };
}

/**
 * Things as they are bought, and bought again each time their useful life ends, the old ones sold. They are written off over
 * the life that the tax office sets, which may be another. Works have no life of their own and are not done again.
 * @param gone month in which they are given up for nothing; null when they are kept
 */
function thingOf({ item, month }: Batch, count: number, rules: TaxRules, gone: number | null): PlannedThing {
  const purchase: CapitalPurchase = {
    name: item.name,
    month,
    amount: count * (item.price + item.installation),
    lifeMonths: item.usefulLife === null ? WORKS_LIFE : Math.max(1, Math.round(item.usefulLife)),
    salvage: count * item.salvage,
    ...rules,
    replaced: item.usefulLife !== null,
    sold: gone === null ? null : { month: gone, amount: 0 },
  };
  return { item, count, purchase };
}

/** What the shop has today, at today's prices and bought as long ago as it is old. Hoses are too small to be on the books. */
function owned(plan: Plan): Batch[] {
  return equipmentItems(plan, scenarioEquipment(todayOf(plan)))
    .filter((item) => item.usefulLife !== null)
    .map((item) => ({ item, month: 0 - Math.max(1, Math.round(item.age)), count: item.count }));
}

/** What a stage has no use for any more, by kind. */
function givenUp(plan: Plan, { before, scenario }: Stage): PurchaseItem[] {
  const have = scenarioEquipment(before);
  const need = scenarioEquipment(scenario);
  return equipmentItems(plan, {
    chambers: toBuy(need.chambers, have.chambers),
    pumps: toBuy(need.pumps, have.pumps),
    hoses: new Map(),
    freezers: Math.max(0, have.freezers - need.freezers),
  });
}

/** Takes a number of things of one kind out of the batches, the oldest first; what is taken leaves in that month. */
function retire(batches: readonly Batch[], item: PurchaseItem, month: number, rules: TaxRules): PlannedThing[] {
  let left = item.count;
  return batches
    .filter((batch) => batch.item.key === item.key)
    .flatMap((batch) => {
      const taken = Math.min(left, batch.count);
      left -= taken;
      batch.count -= taken;
      return taken > 0 ? [thingOf(batch, taken, rules, month)] : [];
    });
}

/** Delivery and contingency, as one more thing that is written off. */
function extras(price: number): PurchaseItem {
  return { key: 'delivery', name: 'Delivery and contingency', group: 'other', count: 1, price, ...WORKS };
}

/** Old equipment given in: written off already, so that all it brings is a gain. */
function tradeIn(amount: number, month: number): PlannedThing {
  const purchase: CapitalPurchase = {
    name: 'Old equipment given in',
    month: -1,
    amount: 0,
    lifeMonths: 1,
    salvage: 0,
    method: { kind: 'straightLine' },
    expensedShare: 0,
    replaced: false,
    sold: { month, amount },
  };
  return { item: null, count: 1, purchase };
}

/** What a stage buys, to the total of its capital, and what it gets for old equipment. */
function boughtIn(plan: Plan, stage: Stage): { batches: Batch[]; given: number } {
  const { lines } = stageCapital(plan, stage);
  const amountOf = (...groups: readonly string[]) =>
    lines.reduce((sum, line) => sum + (groups.includes(line.group) ? line.amount : 0), 0);
  const items = [...purchaseItems(plan, stage), extras(amountOf('delivery', 'contingency'))];
  return {
    batches: items.map((item) => ({ item, month: stage.month, count: item.count })),
    given: 0 - amountOf('tradeIn'),
  };
}

/**
 * Everything that is owned, bought, replaced and given up on the way to a scenario. What a stage has no use for any more is
 * taken off the books when it is bought and brings what the scenario gets for old equipment, nothing beyond.
 * @param stages none for today itself
 */
export function plannedThings(plan: Plan, stages: readonly Stage[]): PlannedThing[] {
  const rules = taxRules(plan);
  const batches = owned(plan);
  const things: PlannedThing[] = [];
  for (const stage of stages) {
    for (const item of givenUp(plan, stage)) things.push(...retire(batches, item, stage.month, rules));
    const { batches: bought, given } = boughtIn(plan, stage);
    batches.push(...bought);
    if (given > 0) things.push(tradeIn(given, stage.month));
  }
  const kept = batches.filter((batch) => batch.count > 0).map((batch) => thingOf(batch, batch.count, rules, null));
  return [...things, ...kept].filter(({ purchase }) => purchase.amount > 0 || purchase.sold !== null);
}

/** The purchases behind `plannedThings`, as the books need them. */
export function equipmentPurchases(plan: Plan, stages: readonly Stage[]): CapitalPurchase[] {
  return plannedThings(plan, stages).map((thing) => thing.purchase);
}
