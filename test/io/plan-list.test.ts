import { describe, expect, it } from 'vitest';
import { duplicateKept, renameKept, withFreeName } from '../../lib/io/plan-list.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { parsePlan } from '../../lib/plan/parse-plan.ts';
import { serialisePlan } from '../../lib/plan/serialise-plan.ts';
import { memoryStore } from './stored-in-memory.ts';

function storeWithDemo() {
  const store = memoryStore();
  const text = serialisePlan(DEMO_PLAN);
  store.kept.set('a', { name: DEMO_PLAN.name, text, waiting: 'w', draft: '', revision: 3 });
  return store;
}

describe('the list of kept plans', () => {
  it('gives a plan another name, in the list and in the plan itself', async () => {
    const { storage, kept } = storeWithDemo();
    expect(await renameKept(storage, 'a', 'Spring')).toEqual({ ok: true, value: 'a' });
    const stored = kept.get('a');
    expect(stored).toMatchObject({ name: 'Spring', waiting: 'w', revision: 4 });
    const plan = parsePlan(stored?.text ?? '');
    expect(plan.ok && plan.value).toEqual({ ...DEMO_PLAN, name: 'Spring' });
  });

  it('copies a plan under a name that is free', async () => {
    const { storage, kept } = storeWithDemo();
    const first = await duplicateKept(storage, 'a');
    await duplicateKept(storage, 'a');
    expect([...kept.values()].map(({ name }) => name)).toEqual([
      DEMO_PLAN.name,
      `${DEMO_PLAN.name} 2`,
      `${DEMO_PLAN.name} 3`,
    ]);
    expect(first.ok && kept.get(first.value)?.revision).toBe(1);
  });

  it('leaves a plan that cannot be read as it is', async () => {
    const { storage, kept } = storeWithDemo();
    kept.set('b', { name: 'Old', text: 'scribble', waiting: '', draft: '', revision: 1 });
    expect(await renameKept(storage, 'b', 'New')).toMatchObject({ ok: false });
    expect(await duplicateKept(storage, 'b')).toMatchObject({ ok: false });
    expect(kept.get('b')).toMatchObject({ name: 'Old', text: 'scribble' });
    expect(kept.size).toBe(2);
  });

  it('says when a plan is gone or the store refuses', async () => {
    const { storage, refuse } = storeWithDemo();
    expect(await renameKept(storage, 'gone', 'New')).toMatchObject({ ok: false, error: expect.stringMatching(/kept/) });
    refuse('no room');
    expect(await duplicateKept(storage, 'a')).toEqual({ ok: false, error: 'no room' });
  });

  it('gives a new plan a name that no kept one has', async () => {
    const { storage } = storeWithDemo();
    expect((await withFreeName(storage, DEMO_PLAN)).name).toBe(`${DEMO_PLAN.name} 2`);
    const other = { ...DEMO_PLAN, name: 'Other' };
    expect(await withFreeName(storage, other)).toBe(other);
  });
});
