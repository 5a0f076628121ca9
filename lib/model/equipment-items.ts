import type { CapitalItem } from '../cost/capital.ts';
import { baseValues } from '../inputs/base-values.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan } from '../plan/plan-types.ts';
import type { Equipment } from './scenario-equipment.ts';

/** A thing the shop has or buys, with what its replacement and resale need. */
export interface PurchaseItem extends CapitalItem {
  /** The same for all things of one kind. */
  readonly key: string;
  /** Months until it is replaced; null for works that are not. */
  readonly usefulLife: number | null;
  /** What one fetches at the end of its life [money]. */
  readonly salvage: number;
  /** How old those are that the shop has today [months]. */
  readonly age: number;
}

function chamberItems(plan: Plan, counts: ReadonlyMap<string, number>): PurchaseItem[] {
  return [...counts].map(([id, count]) => {
    const type = findById(plan.chambers, id, 'chamber type');
    const { price, installation, usefulLife, salvage, age } = baseValues('chamber', type);
    const worth = { price, installation, usefulLife, salvage: salvage * price, age };
    return { key: `chamber ${id}`, name: type.name, group: 'chambers', count, ...worth };
  });
}

function pumpItems(plan: Plan, counts: ReadonlyMap<string, number>): PurchaseItem[] {
  return [...counts].map(([id, count]) => {
    const type = findById(plan.pumps, id, 'pump');
    const { price, usefulLife, salvage, age } = baseValues('pump', type);
    const worth = { price, installation: 0, usefulLife, salvage: salvage * price, age };
    return { key: `pump ${id}`, name: type.name, group: 'pumps', count, ...worth };
  });
}

function hoseItems(plan: Plan, counts: ReadonlyMap<string, number>): PurchaseItem[] {
  return [...counts].map(([id, count]) => {
    const type = findById(plan.hoses, id, 'hose');
    const { price } = baseValues('hose', type);
    return { key: `hose ${id}`, name: type.name, group: 'hoses', count, price, ...WORKS };
  });
}

function freezerItems(plan: Plan, count: number): PurchaseItem[] {
  if (!plan.freezer || count <= 0) return [];
  const { price, usefulLife, salvage, age } = baseValues('freezer', plan.freezer);
  const worth = { price, installation: 0, usefulLife, salvage: salvage * price, age };
  return [{ key: 'freezer', name: 'Freezer', group: 'freezer', count, ...worth }];
}

/** Works, and things like hoses that are not worth an entry of their own later on. */
export const WORKS = { installation: 0, usefulLife: null, salvage: 0, age: 0 } as const;

/** Chambers, pumps, hoses and freezers as things with a price and a life. */
export function equipmentItems(
  plan: Plan,
  counts: Pick<Equipment, 'chambers' | 'pumps' | 'hoses' | 'freezers'>,
): PurchaseItem[] {
  return [
    ...chamberItems(plan, counts.chambers),
    ...pumpItems(plan, counts.pumps),
    ...hoseItems(plan, counts.hoses),
    ...freezerItems(plan, counts.freezers),
  ];
}
