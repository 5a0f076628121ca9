import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { fileNameFor } from '../../lib/io/plan-file.ts';
import { PlanKeeper } from '../../lib/io/plan-keeper.ts';
import type { PlanContent } from '../../lib/io/plan-storage.ts';
import { memoryStore, nearChannels } from './stored-in-memory.ts';

const contentOf = (text: string): PlanContent => ({ name: 'Plan', text, waiting: '', draft: '' });

/** Tabs of one browser, each with a keeper and what it was told. */
function tabs() {
  const store = memoryStore();
  const channel = nearChannels();
  const openTab = () => {
    const told: string[] = [];
    const keeper = new PlanKeeper(store.storage, channel(), {
      onKept: () => told.push('kept'),
      onLoose: (words) => told.push(words),
      onOutside: ({ text }) => told.push(`outside: ${text}`),
      onBranched: () => told.push('branched'),
    });
    return { keeper, told };
  };
  return { ...store, openTab };
}

async function rest(ms = 1000): Promise<void> {
  await vi.advanceTimersByTimeAsync(ms);
}

describe('plan keeper', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  it('writes the last of several edits in quick succession, on top of what it loaded', async () => {
    const { kept, openTab } = tabs();
    kept.set('a', { ...contentOf('before'), revision: 7 });
    const { keeper, told } = openTab();
    expect(await keeper.start()).toMatchObject({ kind: 'found', content: { text: 'before' } });
    keeper.keep(() => contentOf('first'));
    keeper.keep(() => contentOf('second'));
    expect(told).toEqual([]);
    await rest();
    keeper.keep(() => contentOf('third'));
    await rest();
    expect(kept.get('a')).toMatchObject({ text: 'third', revision: 9 });
    expect(told).toEqual(['kept', 'kept']);
  });

  it('writes within a second even when edits never pause', async () => {
    const { kept, openTab } = tabs();
    const { keeper } = openTab();
    await keeper.start();
    for (let edit = 1; edit <= 10; edit += 1) {
      keeper.keep(() => contentOf(`edit ${edit}`));
      await rest(100);
    }
    expect(kept.get('first')?.text).toMatch(/edit [6-9]/);
  });

  it('tries again after a refusal, and says when the plan is kept again', async () => {
    const { kept, refuse, openTab } = tabs();
    const { keeper, told } = openTab();
    await keeper.start();
    refuse('no room');
    keeper.keep(() => contentOf('mine'));
    await rest();
    expect(told).toEqual([expect.stringMatching(/no room.*Save it as a file/)]);
    refuse(null);
    keeper.keep(() => contentOf('mine again'));
    await rest();
    expect(told.at(-1)).toBe('kept');
    expect(kept.get('first')?.text).toBe('mine again');
  });

  it('says in plain words why nothing could be loaded', async () => {
    const { refuse, openTab } = tabs();
    refuse('private window');
    const loaded = await openTab().keeper.start();
    expect(loaded).toMatchObject({ kind: 'refused', words: expect.stringContaining('private window') });
  });

  it('follows what another tab writes into the same plan', async () => {
    const { kept, openTab } = tabs();
    kept.set('a', { ...contentOf('before'), revision: 1 });
    const [one, two] = [openTab(), openTab()];
    await one.keeper.start();
    await two.keeper.start();
    one.keeper.keep(() => contentOf('from one'));
    await rest();
    expect(two.told).toEqual(['outside: from one']);
    two.keeper.keep(() => contentOf('from two'));
    await rest();
    expect(one.told).toEqual(['kept', 'outside: from two']);
    expect(kept.get('a')).toMatchObject({ text: 'from two', revision: 3 });
  });

  it('keeps both when two tabs change one plan at the same time', async () => {
    const { kept, openTab } = tabs();
    kept.set('a', { ...contentOf('before'), revision: 1 });
    const [one, two] = [openTab(), openTab()];
    await one.keeper.start();
    await two.keeper.start();
    one.keeper.keep(() => contentOf('from one'));
    two.keeper.keep(() => contentOf('from two'));
    await rest(2000);
    expect([...kept.values()].map(({ text }) => text).sort()).toEqual(['from one', 'from two']);
    expect([...one.told, ...two.told].filter((words) => words === 'branched')).toHaveLength(1);
    expect(one.keeper.openId()).not.toBe(two.keeper.openId());
  });

  it('writes what waits before it opens another plan, and nothing of it into that one', async () => {
    const { kept, openTab } = tabs();
    kept.set('a', { ...contentOf('a'), revision: 1 });
    kept.set('b', { ...contentOf('b'), revision: 4 });
    const { keeper } = openTab();
    await keeper.open('a');
    keeper.keep(() => contentOf('a, edited'));
    expect(await keeper.open('b')).toMatchObject({ kind: 'found', content: { text: 'b' } });
    await rest();
    expect(kept.get('a')?.text).toBe('a, edited');
    expect(kept.get('b')).toMatchObject({ text: 'b', revision: 4 });
  });

  it('begins a plan of its own beside the others', async () => {
    const { kept, openTab } = tabs();
    kept.set('a', { ...contentOf('a'), revision: 1 });
    const { keeper } = openTab();
    await keeper.start();
    keeper.keep(() => contentOf('a, edited'));
    await keeper.begin();
    keeper.keep(() => contentOf('new'));
    await rest();
    expect([...kept.values()].map(({ text }) => text)).toEqual(['a, edited', 'new']);
  });

  it('keeps a plan again that another tab has deleted meanwhile', async () => {
    const { kept, openTab } = tabs();
    kept.set('a', { ...contentOf('a'), revision: 5 });
    const { keeper } = openTab();
    await keeper.start();
    kept.delete('a');
    keeper.keep(() => contentOf('still at work'));
    await rest();
    expect(kept.get('a')?.text).toBe('still at work');
  });
});

describe('fileNameFor', () => {
  it('is made of letters, digits and hyphens', () => {
    expect(fileNameFor('Pellowick expansion')).toBe('pellowick-expansion.rimeplan.json');
    expect(fileNameFor('  Été / 2 × 3 ')).toBe('ete-2-3.rimeplan.json');
    expect(fileNameFor('…')).toBe('plan.rimeplan.json');
  });
});
