import type { Asked, KeptContent, PlanContent, PlanStorage, SaveOutcome } from '../../lib/io/plan-storage.ts';
import type { TabChannel, TabNews } from '../../lib/io/tab-channel.ts';
import { fail, succeed } from '../../lib/result.ts';

export interface MemoryStore {
  readonly storage: PlanStorage;
  readonly kept: Map<string, KeptContent>;
  /** From now on nothing is stored, with these words; null for as before. */
  readonly refuse: (words: string | null) => void;
}

/** A store with the rules of the browser's own, in memory, that can be told to refuse. */
export function memoryStore(): MemoryStore {
  const kept = new Map<string, KeptContent>();
  const looks = new Map<string, string>();
  let refusal: string | null = null;
  const ask = async <Value>(work: () => Value): Promise<Asked<Value>> =>
    refusal === null ? succeed(work()) : fail(refusal);
  const save = async (id: string, content: PlanContent, base: number): Promise<SaveOutcome> => {
    if (refusal !== null) return { kind: 'refused', message: refusal };
    const stored = kept.get(id);
    if (stored && stored.revision !== base) return { kind: 'conflict' };
    kept.set(id, { ...content, revision: base + 1 });
    return { kind: 'saved', revision: base + 1 };
  };
  return {
    kept,
    refuse: (words) => {
      refusal = words;
    },
    storage: {
      list: () => ask(() => [...kept].map(([id, { name }]) => ({ id, name, touched: 0 }))),
      load: (id) => ask(() => kept.get(id) ?? null),
      save,
      touch: () => ask(() => undefined),
      remove: (id) => ask(() => void kept.delete(id)),
      loadLook: (id) => ask(() => looks.get(id) ?? null),
      saveLook: (id, text) => ask(() => void looks.set(id, text)),
    },
  };
}

/** Channels of tabs that hear each other at once, but never themselves. */
export function nearChannels(): () => TabChannel {
  const ears: { owner: object; hear: (news: TabNews) => void }[] = [];
  return () => {
    const owner = {};
    return {
      tell: (news) => {
        for (const ear of ears) if (ear.owner !== owner) ear.hear(news);
      },
      listen: (hear) => void ears.push({ owner, hear }),
    };
  };
}
