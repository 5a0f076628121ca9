import { type CapitalCost, type CapitalItem, capitalCost } from '../cost/capital.ts';
import { baseValues } from '../inputs/base-values.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { scenarioEquipment, toBuy, todayOf } from './scenario-equipment.ts';

/** A thing to buy, with what its later replacement and resale need. */
export interface PurchaseItem extends CapitalItem {
  /** Months until it is replaced; null for works that are not. */
  readonly usefulLife: number | null;
  /** What one fetches at the end of its life [money]. */
  readonly salvage: number;
}

function chamberItems(plan: Plan, counts: ReadonlyMap<string, number>): PurchaseItem[] {
  return [...counts].map(([id, count]) => {
    const type = findById(plan.chambers, id, 'chamber type');
    const { price, installation, usefulLife, salvage } = baseValues('chamber', type);
    return { name: type.name, group: 'chambers', count, price, installation, usefulLife, salvage: salvage * price };
  });
}

function pumpItems(plan: Plan, counts: ReadonlyMap<string, number>): PurchaseItem[] {
  return [...counts].map(([id, count]) => {
    const type = findById(plan.pumps, id, 'pump');
    const { price, usefulLife } = baseValues('pump', type);
    return { name: type.name, group: 'pumps', count, price, installation: 0, usefulLife, salvage: 0 };
  });
}

function hoseItems(plan: Plan, counts: ReadonlyMap<string, number>): PurchaseItem[] {
  return [...counts].map(([id, count]) => {
    const type = findById(plan.hoses, id, 'hose');
    const { price } = baseValues('hose', type);
    return { name: type.name, group: 'hoses', count, price, installation: 0, usefulLife: null, salvage: 0 };
  });
}

function work(name: string, group: 'manifold' | 'electrical' | 'other', count: number, price: number): PurchaseItem {
  return { name, group, count, price, installation: 0, usefulLife: null, salvage: 0 };
}

/** Everything a scenario needs beyond what the shop has today; nothing for today itself. */
export function purchaseItems(plan: Plan, scenario: Scenario): PurchaseItem[] {
  const today = todayOf(plan);
  if (scenario.id === today.id) return [];
  const have = scenarioEquipment(today);
  const need = scenarioEquipment(scenario);
  const site = baseValues('site', plan.site);
  const extra = baseValues('scenario', scenario).extraCapital;
  const items = [
    ...chamberItems(plan, toBuy(have.chambers, need.chambers)),
    ...pumpItems(plan, toBuy(have.pumps, need.pumps)),
    ...hoseItems(plan, toBuy(have.hoses, need.hoses)),
    work('Manifold', 'manifold', Math.max(0, need.onManifold - have.onManifold), site.manifoldPerChamber),
    work(
      'Electrical work',
      'electrical',
      Math.max(0, need.chamberCount - have.chamberCount),
      site.electricalPerChamber,
    ),
    work('Other', 'other', extra > 0 ? 1 : 0, Math.max(extra, 0)),
  ];
  return items.filter((item) => item.count > 0);
}

/** Money to be found for a scenario, line by line: things, delivery, contingency, less trade-ins. */
export function scenarioCapital(plan: Plan, scenario: Scenario): CapitalCost {
  const items = purchaseItems(plan, scenario);
  const site = baseValues('site', plan.site);
  const extra = baseValues('scenario', scenario).extraCapital;
  const today = scenario.id === todayOf(plan).id;
  return capitalCost({
    items,
    delivery: items.length > 0 ? site.delivery : 0,
    contingency: site.contingency,
    tradeIn: today || extra > 0 ? 0 : -extra,
  });
}
