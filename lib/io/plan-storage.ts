import { Dexie, type EntityTable } from 'dexie';

/** A saved plan as text, and how often it has been saved. */
export interface StoredPlan {
  readonly key: string;
  readonly text: string;
  readonly revision: number;
}

export type SaveOutcome =
  | { readonly kind: 'saved'; readonly revision: number }
  /** Another tab has saved since; nothing was overwritten. */
  | { readonly kind: 'conflict' }
  /** The browser would not store it: private window, no room, storage switched off. */
  | { readonly kind: 'refused'; readonly message: string };

export type LoadOutcome =
  | { readonly kind: 'found'; readonly text: string; readonly revision: number }
  | { readonly kind: 'empty' }
  | { readonly kind: 'refused'; readonly message: string };

export interface PlanStorage {
  readonly load: () => Promise<LoadOutcome>;
  /** @param base revision that the saved text grew out of; 0 for none */
  readonly save: (text: string, base: number) => Promise<SaveOutcome>;
}

const CURRENT = 'current';

type PlanTable = EntityTable<StoredPlan, 'key'>;

function messageOf(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason);
}

async function load(plans: PlanTable): Promise<LoadOutcome> {
  const stored = await plans.get(CURRENT);
  return stored ? { kind: 'found', text: stored.text, revision: stored.revision } : { kind: 'empty' };
}

async function save(database: Dexie, plans: PlanTable, text: string, base: number): Promise<SaveOutcome> {
  return database.transaction('rw', plans, async (): Promise<SaveOutcome> => {
    const stored = await plans.get(CURRENT);
    if (stored && stored.revision !== base) return { kind: 'conflict' };
    const revision = base + 1;
    await plans.put({ key: CURRENT, text, revision });
    return { kind: 'saved', revision };
  });
}

/** The browser's own store for the plan. Nothing it does throws: a refusal is an outcome. */
export function openPlanStorage(): PlanStorage {
  const database = new Dexie('rimeplan');
  database.version(1).stores({ plans: 'key' });
  const plans = database.table('plans') as PlanTable;
  const refused = (reason: unknown) => ({ kind: 'refused', message: messageOf(reason) }) as const;
  return {
    load: () => load(plans).catch(refused),
    save: (text, base) => save(database, plans, text, base).catch(refused),
  };
}
