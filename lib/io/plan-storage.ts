import { Dexie, type EntityTable } from 'dexie';
import { fail, type Result, succeed } from '../result.ts';

/** A plan as it is kept. */
export interface PlanContent {
  /** For the list. */
  readonly name: string;
  readonly text: string;
  /** The entries that wait to be mended, as text. */
  readonly waiting: string;
  /** What is being typed into a cell and not taken up yet, as text. */
  readonly draft: string;
}

/** One plan in the list of kept plans. */
export interface PlanCard {
  readonly id: string;
  readonly name: string;
  /** When it was last opened or changed [ms since 1970]. */
  readonly touched: number;
}

export interface KeptContent extends PlanContent {
  /** How often the plan has been saved. */
  readonly revision: number;
}

interface StoredPlan extends KeptContent {
  readonly key: string;
  readonly touched: number;
}

interface StoredLook {
  readonly plan: string;
  readonly text: string;
}

export type SaveOutcome =
  | { readonly kind: 'saved'; readonly revision: number }
  /** Another tab has saved since; nothing was overwritten. */
  | { readonly kind: 'conflict' }
  /** The browser would not store it: private window, no room, storage switched off. */
  | { readonly kind: 'refused'; readonly message: string };

/** What came of asking the browser, or its words for why it refused. */
export type Asked<Value> = Result<Value, string>;

/** The browser's own store for plans. Nothing it does throws: a refusal is an outcome. */
export interface PlanStorage {
  /** Latest first. */
  readonly list: () => Promise<Asked<readonly PlanCard[]>>;
  readonly load: (id: string) => Promise<Asked<KeptContent | null>>;
  /** @param base revision that the content grew out of; 0 for none. A plan deleted meanwhile is kept again. */
  readonly save: (id: string, content: PlanContent, base: number) => Promise<SaveOutcome>;
  /** Notes that a plan was opened. */
  readonly touch: (id: string) => Promise<Asked<void>>;
  readonly remove: (id: string) => Promise<Asked<void>>;
  /** How the sheet of a plan is looked at, as text; null when nothing is kept. */
  readonly loadLook: (id: string) => Promise<Asked<string | null>>;
  readonly saveLook: (id: string, text: string) => Promise<Asked<void>>;
}

type PlanTable = EntityTable<StoredPlan, 'key'>;
type LookTable = EntityTable<StoredLook, 'plan'>;

function messageOf(reason: unknown): string {
  return reason instanceof Error ? reason.message : String(reason);
}

async function asked<Value>(work: () => PromiseLike<Value>): Promise<Asked<Value>> {
  try {
    return succeed(await work());
  } catch (reason) {
    return fail(messageOf(reason));
  }
}

async function cardsIn(plans: PlanTable): Promise<readonly PlanCard[]> {
  const stored = await plans.toArray();
  const cards = stored.map(({ key, name, touched }) => ({ id: key, name, touched }));
  return cards.sort((a, b) => b.touched - a.touched);
}

async function contentIn(plans: PlanTable, id: string): Promise<KeptContent | null> {
  const stored = await plans.get(id);
  if (!stored) return null;
  const { name, text, waiting, draft, revision } = stored;
  return { name, text, waiting, draft, revision };
}

/** Compares and writes in one transaction, which no other tab can come between. */
async function save(database: Dexie, plans: PlanTable, key: string, content: PlanContent, base: number) {
  return database.transaction('rw', plans, async (): Promise<SaveOutcome> => {
    const stored = await plans.get(key);
    if (stored && stored.revision !== base) return { kind: 'conflict' };
    const revision = base + 1;
    await plans.put({ key, ...content, revision, touched: Date.now() });
    return { kind: 'saved', revision };
  });
}

async function remove(database: Dexie, plans: PlanTable, looks: LookTable, id: string): Promise<void> {
  await database.transaction('rw', plans, looks, async () => {
    await plans.delete(id);
    await looks.delete(id);
  });
}

/** Opens the store of this browser; it is created when it is first written to. */
export function openPlanStorage(): PlanStorage {
  const database = new Dexie('rimeplan');
  database.version(2).stores({ plans: 'key', looks: 'plan' });
  const plans = database.table('plans') as PlanTable;
  const looks = database.table('looks') as LookTable;
  return {
    list: () => asked(() => cardsIn(plans)),
    load: (id) => asked(() => contentIn(plans, id)),
    save: (id, content, base) =>
      save(database, plans, id, content, base).catch((reason) => ({ kind: 'refused', message: messageOf(reason) })),
    touch: (id) => asked(async () => void (await plans.update(id, { touched: Date.now() }))),
    remove: (id) => asked(() => remove(database, plans, looks, id)),
    loadLook: (id) => asked(async () => (await looks.get(id))?.text ?? null),
    saveLook: (id, text) => asked(async () => void (await looks.put({ plan: id, text }))),
  };
}
