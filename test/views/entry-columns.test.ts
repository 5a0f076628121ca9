import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../lib/plan/check-plan.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Scenario } from '../../lib/plan/plan-types.ts';
import { entryColumns } from '../../lib/views/entry-columns.ts';
import { columnOf, DEMO_COLUMNS, scenarioOf } from './sheet-of-demo.ts';

const SHARED = scenarioOf(DEMO_PLAN, 'six-shared');

function edited(columnId: string, text: string, scenario: Scenario = SHARED): Scenario {
  const result = columnOf(columnId).edit(scenario, text);
  if (!result.ok) throw new Error(result.error.problem);
  return result.value;
}

function problemOf(columnId: string, text: string, scenario: Scenario = SHARED): string {
  const result = columnOf(columnId).edit(scenario, text);
  return result.ok ? '' : result.error.problem;
}

describe('entry columns', () => {
  it('show what the plan holds', () => {
    const texts = DEMO_COLUMNS.map((column) => [column.id, column.text(SHARED)]);
    expect(Object.fromEntries(texts)).toMatchObject({
      name: 'Six on one pump',
      'chambers:mid': '6',
      'chambers:large': '0',
      pumpArrangement: 'one shared',
      pump: 'Good pump with gas ballast',
      roughingPump: 'none',
      purchaseMonth: '2',
      extraCapital: '0',
    });
  });

  it('are called simply "Chambers" when there is one type', () => {
    const plan = { ...DEMO_PLAN, chambers: DEMO_PLAN.chambers.slice(0, 1) };
    expect(entryColumns(plan).map((column) => column.label)).toContain('Chambers');
  });

  it('take sums and units', () => {
    expect(edited('chambers:mid', '3+5').chambers).toEqual([{ chamber: 'mid', count: 8 }]);
    expect(edited('purchaseMonth', '1 year').purchaseMonth).toBe(12);
    expect(edited('extraCapital', '3*4500+200').extraCapital.value).toBe(13700);
    expect(edited('extraCapital', '($1,200)').extraCapital.value).toBe(-1200);
  });

  it('take choices by their words or a part of them', () => {
    expect(edited('pumpArrangement', 'Own').pumpArrangement).toBe('own');
    expect(edited('pump', 'small').pump).toBe('small');
    expect(edited('pattern', 'saturday').pattern).toBe('two-shifts');
  });

  it('drop a chamber type that there are none of, and add one that was not there', () => {
    const two = edited('chambers:large', '2');
    expect(two.chambers).toEqual([
      { chamber: 'mid', count: 6 },
      { chamber: 'large', count: 2 },
    ]);
    expect(edited('chambers:mid', '0', two).chambers).toEqual([{ chamber: 'large', count: 2 }]);
  });

  it.each([
    ['chambers:mid', '0', 'The scenario would have no chamber.'],
    ['chambers:mid', 'many', '"many" cannot be read.'],
    ['chambers:mid', '2.5', 'Chambers must be a whole number.'],
    ['pump', 'Gigantic', '"Gigantic" is not one of the choices.'],
    ['pump', '', 'Nothing is chosen.'],
    ['name', '   ', 'The name is empty.'],
  ])('%s refuses "%s"', (column, text, problem) => {
    expect(problemOf(column, text)).toBe(problem);
  });

  it('refuse more chambers than fit, whatever the type', () => {
    const many = edited('chambers:large', '18');
    expect(problemOf('chambers:mid', '7', many)).toBe('That makes 25 chambers.');
  });

  it('give a scenario that starts on a roughing pump one, and take it out of that way of starting without one', () => {
    const roughing = edited('startPractice', 'roughing pump first');
    expect(roughing.roughingPump).toBe(DEMO_PLAN.pumps[0]?.id);
    expect(edited('roughingPump', 'none', roughing).startPractice).toBe('isolate');
  });

  it('mark what has no effect', () => {
    expect(columnOf('groupSize').isIdle(SHARED)).toBe(true);
    expect(columnOf('groupSize').isIdle(edited('pumpArrangement', 'groups'))).toBe(false);
    expect(columnOf('roughingPump').isIdle(SHARED)).toBe(true);
  });

  it('can be emptied where there is a usual value', () => {
    expect(columnOf('purchaseMonth').emptied(SHARED)?.purchaseMonth).toBe(0);
    expect(columnOf('chambers:large').emptied(SHARED)?.chambers).toEqual(SHARED.chambers);
    expect(columnOf('chambers:mid').emptied(SHARED)).toBeNull();
    expect(columnOf('name').emptied(SHARED)).toBeNull();
  });

  it('read back what they show', () => {
    for (const scenario of DEMO_PLAN.scenarios) {
      for (const column of DEMO_COLUMNS) {
        const again = column.edit(scenario, column.plainText(scenario));
        expect(again.ok && column.plainText(again.value), column.id).toBe(column.plainText(scenario));
      }
    }
  });

  it('never let anything into the plan that the plan refuses', () => {
    const text = fc.oneof(
      fc.string(),
      fc.integer({ min: -5, max: 40 }).map(String),
      fc.constantFrom(...DEMO_COLUMNS.flatMap((column) => column.options ?? [])),
    );
    const entries = fc.array(fc.tuple(fc.nat(DEMO_COLUMNS.length - 1), text), { maxLength: 6 });
    fc.assert(
      fc.property(entries, (list) => {
        let scenario = SHARED;
        for (const [at, entry] of list) {
          const result = DEMO_COLUMNS[at]?.edit(scenario, entry);
          if (result?.ok) scenario = result.value;
        }
        const plan = {
          ...DEMO_PLAN,
          scenarios: DEMO_PLAN.scenarios.map((other) => (other.id === scenario.id ? scenario : other)),
        };
        const checked = checkPlan(plan);
        expect(checked.ok ? [] : checked.error).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});
