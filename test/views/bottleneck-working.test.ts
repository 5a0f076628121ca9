import { describe, expect, it } from 'vitest';
import { findBottleneck } from '../../lib/insight/find-bottleneck.ts';
import type { Bottleneck } from '../../lib/insight/insight-types.ts';
import type { WorkContext } from '../../lib/model/workings/working.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { bottleneckOutput } from '../../lib/views/bottleneck-working.ts';
import { explainView } from '../../lib/views/explain-view.ts';
import { computed } from '../model/computed.ts';
import { smallPlan } from '../model/edited-plan.ts';
import { contextOf, faultsOf } from '../model/workings/explained.ts';

const US = { system: 'us', currency: 'USD' } as const;

interface Case {
  readonly bottleneck: Bottleneck;
  readonly context: WorkContext;
}

function caseOf(plan: Plan, id: string): Case {
  const bottleneck = findBottleneck(plan, id);
  if (!bottleneck) throw new Error(`${id} should run`);
  return { bottleneck, context: contextOf(plan, id, (wanted) => computed(plan, wanted)) };
}

/** Two chambers that share a pump, said to jam on it: what they are explained by is the same. */
const SHARED = caseOf(smallPlan(), 'two');
const JAMMED = { ...SHARED, bottleneck: { ...SHARED.bottleneck, sharedPumpJams: true } };
const PLAIN = caseOf(smallPlan(), 'today');

function pageOf({ bottleneck, context }: Case, trail: readonly number[] = []) {
  const { page } = explainView(bottleneckOutput(bottleneck), context, trail, US);
  if (page.kind !== 'worked') throw new Error(page.kind);
  return page;
}

describe('the working of what holds a scenario back', () => {
  it.each([
    ['a jammed pump', JAMMED],
    ['something else', PLAIN],
    [
      'nothing in particular',
      { ...PLAIN, bottleneck: { ...PLAIN.bottleneck, resource: null, thresholds: { gain: 9, lastChamber: 0.8 } } },
    ],
  ])('gives the figure, at any depth: %s', (_, { bottleneck, context }) => {
    expect(faultsOf(context, [bottleneckOutput(bottleneck)])).toEqual([]);
  });

  it('finds a figure that its candidates do not give', () => {
    const { bottleneck, context } = PLAIN;
    const wrong = { ...bottleneck, yardstick: 2 * bottleneck.yardstick };
    expect(faultsOf(context, [bottleneckOutput(wrong)])).not.toEqual([]);
  });

  it('shows the flag’s own figure, and every candidate with its gain, most first', () => {
    const { bottleneck, context } = PLAIN;
    expect(bottleneck.resource).not.toBeNull();
    expect(bottleneckOutput(bottleneck).read(context.result)).toBeCloseTo(bottleneck.gainShare, 12);
    const lines = pageOf(PLAIN, [0]).lines;
    expect(lines).toHaveLength(bottleneck.reliefs.filter(({ gain }) => gain !== null).length);
    expect(lines[0]?.value).toBe(pageOf(PLAIN).lines[0]?.value);
    expect(pageOf(PLAIN, [0, 0]).formula).toContain('with a quarter more');
  });

  it('tells of a jammed pump what the last chamber adds, against the threshold, and what a quarter more would bring', () => {
    expect(JAMMED.bottleneck.sharedOutputs).not.toBeNull();
    const labels = pageOf(JAMMED).lines.map(({ label }) => label);
    expect(labels).toEqual([
      'Last chamber on the pump adds',
      'Jammed below',
      'Largest gain of a quarter more, as a share',
    ]);
    expect(bottleneckOutput(JAMMED.bottleneck).read(JAMMED.context.result)).toBe(JAMMED.bottleneck.lastChamberAdds);
    expect(pageOf(JAMMED, [0]).lines).toHaveLength(3);
    expect(pageOf(JAMMED, [2, 0]).lines.length).toBeGreaterThan(3);
  });

  it('has no figure where nothing could be enlarged', () => {
    const reliefs = PLAIN.bottleneck.reliefs.map((relief) => ({ ...relief, gain: null }));
    const output = bottleneckOutput({ ...PLAIN.bottleneck, reliefs });
    expect(output.read(PLAIN.context.result)).toBeNull();
    expect(output.working(PLAIN.context).kind).toBe('none');
  });
});
