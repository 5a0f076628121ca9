import { type CapitalCost, capitalCost } from '../cost/capital.ts';
import { baseValues } from '../inputs/base-values.ts';
import type { Plan } from '../plan/plan-types.ts';
import { equipmentItems, type PurchaseItem, WORKS } from './equipment-items.ts';
import { scenarioEquipment, toBuy } from './scenario-equipment.ts';
import type { Stage } from './scenario-stages.ts';

function work(name: string, group: 'manifold' | 'electrical' | 'other', count: number, price: number): PurchaseItem {
  return { key: group, name, group, count, price, ...WORKS };
}

/** Everything a stage needs beyond what the shop has before it. */
export function purchaseItems(plan: Plan, { before, scenario }: Pick<Stage, 'before' | 'scenario'>): PurchaseItem[] {
  const have = scenarioEquipment(before);
  const need = scenarioEquipment(scenario);
  const site = baseValues('site', plan.site);
  const extra = baseValues('scenario', scenario).extraCapital;
  const bought = {
    chambers: toBuy(have.chambers, need.chambers),
    pumps: toBuy(have.pumps, need.pumps),
    hoses: toBuy(have.hoses, need.hoses),
    freezers: Math.max(0, need.freezers - have.freezers),
  };
  const tied = Math.max(0, need.onManifold - have.onManifold);
  const wired = Math.max(0, need.chamberCount - have.chamberCount);
  const items = [
    ...equipmentItems(plan, bought),
    work('Manifold', 'manifold', tied, site.manifoldPerChamber),
    work('Electrical work', 'electrical', wired, site.electricalPerChamber),
    work('Other', 'other', extra > 0 ? 1 : 0, Math.max(extra, 0)),
  ];
  return items.filter((item) => item.count > 0);
}

/** Money to be found for a stage, line by line: things, delivery, contingency, less trade-ins. */
export function stageCapital(plan: Plan, stage: Pick<Stage, 'before' | 'scenario'>): CapitalCost {
  const items = purchaseItems(plan, stage);
  const site = baseValues('site', plan.site);
  const extra = baseValues('scenario', stage.scenario).extraCapital;
  return capitalCost({
    items,
    delivery: items.length > 0 ? site.delivery : 0,
    contingency: site.contingency,
    tradeIn: extra > 0 ? 0 : 0 - extra,
  });
}
