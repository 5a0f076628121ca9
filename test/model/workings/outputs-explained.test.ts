import { describe, expect, it } from 'vitest';
import { OUTPUTS } from '../../../lib/model/outputs.ts';
import type { WorkContext } from '../../../lib/model/workings/working.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { findById } from '../../../lib/plan/find-by-id.ts';
import type { Plan } from '../../../lib/plan/plan-types.ts';
import { computed, demoResult } from '../computed.ts';
import { workingFaults } from './recomputed.ts';

function contextOf(plan: Plan, id: string, result: (id: string) => WorkContext['result']): WorkContext {
  const first = plan.scenarios[0]?.id ?? '';
  return { plan, scenario: findById(plan.scenarios, id, 'scenario'), result: result(id), today: result(first) };
}

/** All that is wrong with the explanations of one scenario. */
function faultsOf(context: WorkContext): string[] {
  return OUTPUTS.flatMap((output) => {
    if (!output.working) return [];
    const value = output.read(context.result);
    const explanation = output.working(context);
    if (explanation.kind === 'none') return value === null ? [] : [`${output.id}: ${value} is not explained`];
    if (value === null) return [`${output.id}: there is no figure, but a working`];
    return workingFaults(context, explanation, value, output.id);
  });
}

describe('the working of every output gives the output', () => {
  it.each(DEMO_PLAN.scenarios.map((scenario) => scenario.id))('in the demo: %s', (id) => {
    expect(faultsOf(contextOf(DEMO_PLAN, id, demoResult))).toEqual([]);
  });
});
