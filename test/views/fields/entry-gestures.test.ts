import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { valueAtPlace } from '../../../lib/plan/place.ts';
import type { Plan } from '../../../lib/plan/plan-types.ts';
import { applyFields } from '../../../lib/views/fields/apply-fields.ts';
import { addEntry, duplicateEntry, type EntryGesture, removeEntry } from '../../../lib/views/fields/entry-gestures.ts';
import type { BlockList } from '../../../lib/views/fields/field-block.ts';
import { performFields, presentState, startSheet } from '../../../lib/views/sheet-history.ts';
import { allBlocks, blockOf, entryFor, stateOf } from './demo-blocks.ts';

const STATE = stateOf(DEMO_PLAN);
const START = startSheet(DEMO_PLAN);

function listOf(id: string): BlockList {
  const { list } = blockOf(STATE, id);
  if (!list) throw new Error(`${id} is no list`);
  return list;
}

function done(gesture: EntryGesture): { plan: Plan; said: string; done: boolean } {
  const outcome = gesture(START);
  return { plan: presentState(outcome.sheet).plan, said: outcome.said, done: outcome.done };
}

const LISTS = allBlocks(STATE).flatMap((block) => block.list ?? []);

describe('entries of lists', () => {
  it.each(LISTS)('$place takes a new entry', (list) => {
    const before = valueAtPlace(DEMO_PLAN, list.place) as readonly unknown[];
    const outcome = done(addEntry(list));
    expect(outcome).toMatchObject({ done: true });
    expect((valueAtPlace(outcome.plan, list.place) as readonly unknown[]).length).toBeGreaterThan(before.length);
  });

  it('copies stand beside the original under a name of their own', () => {
    const { plan } = done(duplicateEntry(listOf('pumps'), 0));
    expect(plan.pumps.map((pump) => pump.name)).toEqual(['Small pump', 'Small pump 2', 'Good pump with gas ballast']);
    expect(plan.pumps[1]?.speed).toBe(plan.pumps[0]?.speed);
  });

  it('what a scenario uses is not taken out, and it is said why', () => {
    const outcome = done(removeEntry(listOf('pumps'), 0));
    expect(outcome).toMatchObject({ plan: DEMO_PLAN, done: false });
    expect(outcome.said).toBe('This pump type is in use: Today. Choose another one there first.');
  });

  it('the last of a catalogue is not taken out', () => {
    const one = startSheet({ ...DEMO_PLAN, hoses: DEMO_PLAN.hoses.slice(0, 1) });
    expect(removeEntry(listOf('hoses'), 0)(one).said).toContain('at least one hose');
  });

  it('what nothing uses goes', () => {
    expect(done(removeEntry(listOf('chambers'), 1)).plan.chambers).toHaveLength(1);
    expect(done(removeEntry(listOf('financing.loans'), 0)).plan.financing.loans).toHaveLength(1);
    expect(done(removeEntry(listOf('crew.patterns.@two-shifts.shifts'), 1)).plan.crew.patterns[1]?.shifts).toHaveLength(
      2,
    );
  });

  it('a speed curve begins with two points and goes with its last but one', () => {
    const list = listOf('pumps.@small.speedTable');
    const added = addEntry(list)(START);
    const [first, second] = presentState(added.sheet).plan.pumps[0]?.speedTable ?? [];
    // The small pump: 5 m³/h, down to 5 Pa.
    expect(first).toEqual({ pressure: 20, speed: 3.75 });
    expect(second).toEqual({ pressure: 1000, speed: 4.98 });
    const third = addEntry(list)(added.sheet);
    expect(presentState(third.sheet).plan.pumps[0]?.speedTable).toHaveLength(3);
    const gone = removeEntry(list, 0)(added.sheet);
    expect(presentState(gone.sheet).plan.pumps[0]?.speedTable).toEqual([]);
  });

  it('texts that wait in numbered lines do not slip to another line', () => {
    const place = 'crew.patterns.@two-shifts.shifts.1.start';
    const marked = performFields(START, applyFields(STATE, [entryFor(STATE, place, 'late')])).sheet;
    expect(presentState(marked).misread).toHaveLength(1);
    const gone = removeEntry(listOf('crew.patterns.@two-shifts.shifts'), 0)(marked);
    expect(presentState(gone.sheet).misread).toEqual([]);
  });
});
