import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
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

interface Tables extends DBSchema {
  readonly plans: { readonly key: string; readonly value: StoredPlan };
  readonly looks: { readonly key: string; readonly value: StoredLook };
}

type Database = IDBPDatabase<Tables>;

const NAME = 'rimeplan';

/** Raised whenever a table is added or changed. */
const VERSION = 20;

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

async function cardsIn(database: Database): Promise<readonly PlanCard[]> {
  const stored = await database.getAll('plans');
  const cards = stored.map(({ key, name, touched }) => ({ id: key, name, touched }));
  return cards.sort((a, b) => b.touched - a.touched);
}

async function contentIn(database: Database, id: string): Promise<KeptContent | null> {
  const stored = await database.get('plans', id);
  if (!stored) return null;
  const { name, text, waiting, draft, revision } = stored;
  return { name, text, waiting, draft, revision };
}

/** Compares and writes in one transaction, which no other tab can come between. */
async function save(database: Database, key: string, content: PlanContent, base: number): Promise<SaveOutcome> {
  const change = database.transaction('plans', 'readwrite');
  // A write that fails ends the transaction too; the failure is told once, by the write.
  change.done.catch(() => undefined);
  const stored = await change.store.get(key);
  if (stored && stored.revision !== base) return { kind: 'conflict' };
  const revision = base + 1;
  await change.store.put({ key, ...content, revision, touched: Date.now() });
  await change.done;
  return { kind: 'saved', revision };
}

async function touch(database: Database, key: string): Promise<void> {
  const change = database.transaction('plans', 'readwrite');
  const stored = await change.store.get(key);
  if (stored) await change.store.put({ ...stored, touched: Date.now() });
  await change.done;
}

async function remove(database: Database, id: string): Promise<void> {
  const change = database.transaction(['plans', 'looks'], 'readwrite');
  await Promise.all([change.objectStore('plans').delete(id), change.objectStore('looks').delete(id), change.done]);
}

function openDatabase(forget: () => void): Promise<Database> {
  return openDB<Tables>(NAME, VERSION, {
    upgrade(database) {
      if (!database.objectStoreNames.contains('plans')) database.createObjectStore('plans', { keyPath: 'key' });
      if (!database.objectStoreNames.contains('looks')) database.createObjectStore('looks', { keyPath: 'plan' });
    },
    // Another tab has a newer page that waits for this one to let go.
    blocking: (_present, _wanted, event) => {
      (event.target as IDBDatabase).close();
      forget();
    },
    terminated: forget,
  });
}

/** The store of this browser; it is opened when it is first asked, and again after the browser has closed it. */
export function openPlanStorage(): PlanStorage {
  let opening: Promise<Database> | null = null;
  const database = (): Promise<Database> => {
    opening ??= openDatabase(() => {
      opening = null;
    });
    // A browser that refused once may have room later.
    opening.catch(() => {
      opening = null;
    });
    return opening;
  };
  return {
    list: () => asked(async () => cardsIn(await database())),
    load: (id) => asked(async () => contentIn(await database(), id)),
    save: async (id, content, base) => {
      const saved = await asked(async () => save(await database(), id, content, base));
      return saved.ok ? saved.value : { kind: 'refused', message: saved.error };
    },
    touch: (id) => asked(async () => touch(await database(), id)),
    remove: (id) => asked(async () => remove(await database(), id)),
    loadLook: (id) => asked(async () => (await (await database()).get('looks', id))?.text ?? null),
    saveLook: (id, text) => asked(async () => void (await (await database()).put('looks', { plan: id, text }))),
  };
}
