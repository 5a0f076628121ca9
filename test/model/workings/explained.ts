import type { OutputField } from '../../../lib/model/outputs/output-field.ts';
import { OUTPUTS } from '../../../lib/model/outputs.ts';
import type { WorkContext } from '../../../lib/model/workings/working.ts';
import { findById } from '../../../lib/plan/find-by-id.ts';
import type { Plan } from '../../../lib/plan/plan-types.ts';
import { computed } from '../computed.ts';
import { type Seen, workingFaults } from './recomputed.ts';

/** What one scenario of a plan is explained from. */
export function contextOf(plan: Plan, id: string, result: (id: string) => WorkContext['result']): WorkContext {
  const first = plan.scenarios[0]?.id ?? '';
  return { plan, scenario: findById(plan.scenarios, id, 'scenario'), result: result(id), today: result(first) };
}

/** All that is wrong with the explanations of one scenario, of all figures of the sheet where none are named. */
export function faultsOf(context: WorkContext, outputs: readonly OutputField[] = OUTPUTS): string[] {
  const seen: Seen = new Set();
  return outputs.flatMap((output) => {
    const value = output.read(context.result);
    const explanation = output.working(context);
    if (explanation.kind === 'none') return value === null ? [] : [`${output.id}: ${value} is not explained`];
    if (value === null) return [`${output.id}: there is no figure, but a working`];
    return workingFaults(context, explanation, value, output.id, seen);
  });
}

/** The same for a scenario that is worked out for it. */
export function faultsIn(plan: Plan, id: string): string[] {
  return faultsOf(contextOf(plan, id, (wanted) => computed(plan, wanted)));
}
