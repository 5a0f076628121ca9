import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { type History, recordStep, redo, startHistory, undo } from '../../lib/plan/history.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';

function named(name: string): Plan {
  return { ...DEMO_PLAN, name };
}

function historyAfter(...names: readonly string[]): History {
  return names.reduce((history, name) => recordStep(history, named(name), `name it ${name}`), startHistory(DEMO_PLAN));
}

describe('history', () => {
  it('undoes and redoes one gesture at a time, with its label', () => {
    const history = historyAfter('a', 'b');
    expect(history.past.at(-1)?.label).toBe('name it b');
    const back = undo(history);
    expect([back.present.name, back.past.at(-1)?.label, back.future[0]?.label]).toEqual([
      'a',
      'name it a',
      'name it b',
    ]);
    expect(undo(back).present).toBe(DEMO_PLAN);
    expect(redo(back)).toEqual(history);
  });

  it('stays as it is at either end', () => {
    const history = startHistory(DEMO_PLAN);
    expect(undo(history)).toBe(history);
    expect(redo(history)).toBe(history);
  });

  it('forgets what was undone once something new is done', () => {
    const history = recordStep(undo(historyAfter('a', 'b')), named('c'), 'name it c');
    expect(history.future).toEqual([]);
    expect(history.past.map((step) => step.label)).toEqual(['name it a', 'name it c']);
  });

  it('records nothing when nothing changed', () => {
    const history = historyAfter('a');
    expect(recordStep(history, history.present, 'idle')).toBe(history);
  });

  it('forgets the oldest steps beyond 200', () => {
    const history = historyAfter(...Array.from({ length: 230 }, (_, i) => `n${i}`));
    expect(history.past.length).toBe(200);
    expect(history.past[0]?.plan.name).toBe('n29');
  });

  it('comes back to where it was after any walk of undo and as many redo', () => {
    fc.assert(
      fc.property(fc.array(fc.string(), { maxLength: 20 }), fc.nat(25), (names, steps) => {
        const history = historyAfter(...names);
        let walked = history;
        for (let i = 0; i < steps; i += 1) walked = undo(walked);
        for (let i = 0; i < steps; i += 1) walked = redo(walked);
        expect(walked).toEqual(history);
      }),
    );
  });
});
