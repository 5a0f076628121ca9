import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { fileNameFor } from '../../lib/io/plan-file.ts';
import { createPlanKeeper } from '../../lib/io/plan-keeper.ts';
import type { LoadOutcome, SaveOutcome } from '../../lib/io/plan-storage.ts';

/** A store in memory that can be told to refuse. */
function storeOf(load: LoadOutcome) {
  const saved: [string, number][] = [];
  let answer: SaveOutcome | null = null;
  return {
    saved,
    refuse: (outcome: SaveOutcome) => {
      answer = outcome;
    },
    storage: {
      load: async () => load,
      save: async (text: string, base: number): Promise<SaveOutcome> => {
        saved.push([text, base]);
        return answer ?? { kind: 'saved', revision: base + 1 };
      },
    },
  };
}

const FOUND: LoadOutcome = { kind: 'found', text: 'kept', revision: 7 };

const SILENT = { onKept: () => {}, onLoose: () => {} };

async function rest(): Promise<void> {
  await vi.advanceTimersByTimeAsync(1000);
}

describe('plan keeper', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('writes the last of several plans in quick succession, on top of what it loaded', async () => {
    const { storage, saved } = storeOf(FOUND);
    const keeper = createPlanKeeper(storage, SILENT);
    await keeper.load();
    keeper.keep(() => 'first');
    keeper.keep(() => 'second');
    await rest();
    keeper.keep(() => 'third');
    await rest();
    expect(saved).toEqual([
      ['second', 7],
      ['third', 8],
    ]);
  });

  it('tells when the latest plan has been written', async () => {
    const { storage } = storeOf(FOUND);
    let kept = 0;
    const onKept = () => {
      kept += 1;
    };
    const keeper = createPlanKeeper(storage, { ...SILENT, onKept });
    await keeper.load();
    keeper.keep(() => 'first');
    expect(kept).toBe(0);
    await rest();
    expect(kept).toBe(1);
  });

  it.each([
    [{ kind: 'conflict' } as const, /Another tab/],
    [{ kind: 'refused', message: 'no room' } as const, /no room.*Save it as a file/],
  ])('says once that the plan is no longer kept, and then leaves the store alone: %o', async (outcome, words) => {
    const { storage, saved, refuse } = storeOf(FOUND);
    const said: string[] = [];
    const keeper = createPlanKeeper(storage, { ...SILENT, onLoose: (text) => said.push(text) });
    await keeper.load();
    refuse(outcome);
    keeper.keep(() => 'mine');
    await rest();
    keeper.keep(() => 'mine again');
    await rest();
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(words);
    expect(saved).toHaveLength(1);
  });

  it('says in plain words why nothing could be loaded', async () => {
    const { storage } = storeOf({ kind: 'refused', message: 'private window' });
    const loaded = await createPlanKeeper(storage, SILENT).load();
    expect(loaded).toMatchObject({ kind: 'refused', words: expect.stringContaining('private window') });
  });
});

describe('fileNameFor', () => {
  it('is made of letters, digits and hyphens', () => {
    expect(fileNameFor('Pellowick expansion')).toBe('pellowick-expansion.rimeplan.json');
    expect(fileNameFor('  Été / 2 × 3 ')).toBe('ete-2-3.rimeplan.json');
    expect(fileNameFor('…')).toBe('plan.rimeplan.json');
  });
});
