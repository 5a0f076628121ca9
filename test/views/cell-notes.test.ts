import { describe, expect, it } from 'vitest';
import { applyCommand } from '../../lib/plan/commands/apply-command.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { noteOn, writeNote } from '../../lib/views/cell-notes.ts';
import { scenarioOf } from './sheet-of-demo.ts';

const CELL = { scenarioId: 'three-shared', columnId: 'pump' };

function written(plan: Plan, text: string): Plan {
  const gesture = writeNote(plan, CELL, text);
  const outcome = gesture && applyCommand(plan, gesture.command);
  if (!outcome?.ok) throw new RangeError(`"${text}" was not written`);
  return outcome.value;
}

describe('notes on cells', () => {
  it('are written, changed and taken away', () => {
    const noted = written(DEMO_PLAN, ' ask for a quote\nby Friday ');
    expect(noteOn(scenarioOf(noted, 'three-shared'), 'pump')).toBe('ask for a quote\nby Friday');
    expect(noteOn(scenarioOf(noted, 'three-shared'), 'hose')).toBe('');
    expect(noteOn(scenarioOf(written(noted, 'quote came'), 'three-shared'), 'pump')).toBe('quote came');
    expect(scenarioOf(written(noted, '  '), 'three-shared').notes).toEqual({});
  });

  it('say what was done, and nothing when nothing changes', () => {
    expect(writeNote(DEMO_PLAN, CELL, 'a')?.said).toBe('Three on one pump: note written.');
    expect(writeNote(DEMO_PLAN, CELL, '')).toBeNull();
    expect(writeNote(DEMO_PLAN, { ...CELL, scenarioId: 'gone' }, 'a')).toBeNull();
  });

  it('are cut to what a plan may hold', () => {
    expect(noteOn(scenarioOf(written(DEMO_PLAN, 'x'.repeat(5000)), 'three-shared'), 'pump')).toHaveLength(1000);
  });

  it('are none on columns that every object carries', () => {
    expect(noteOn(scenarioOf(DEMO_PLAN, 'today'), 'constructor')).toBe('');
  });
});
