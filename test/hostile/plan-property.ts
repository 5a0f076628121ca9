import { expect } from 'vitest';
import { evaluateScenario, todayWeek } from '../../lib/model/evaluate-scenario.ts';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import { checkPlan } from '../../lib/plan/check-plan.ts';
import { LIMITS } from '../../lib/plan/limits.ts';
import { parsePlan } from '../../lib/plan/parse-plan.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { serialisePlan } from '../../lib/plan/serialise-plan.ts';
import { planFileWords } from '../../lib/views/plan-file-words.ts';
import { fakeSimulation } from '../model/fake-plant.ts';

/** One in so many accepted plans is worked out. */
const SAMPLED = 50;

/** How many texts were taken and refused, so that a test can tell that it met both. */
export interface Seen {
  taken: number;
  refused: number;
}

const simulate = fakeSimulation();

/** Works a plan out on made-up weeks: every figure is a number or none, or the scenario is refused with reasons. */
function expectFigures(plan: Plan): void {
  const today = todayWeek(plan, simulate);
  for (const { id } of plan.scenarios) {
    const outcome = evaluateScenario(plan, id, today, simulate);
    if (outcome.kind !== 'computed') continue;
    const wrong = OUTPUTS.filter((output) => !Number.isFinite(output.read(outcome.result) ?? 0));
    expect(wrong.map((output) => output.id)).toEqual([]);
  }
}

function expectSound(plan: Plan, seen: Seen): void {
  expect(checkPlan(JSON.parse(serialisePlan(plan)))).toEqual({ ok: true, value: plan });
  if (seen.taken % SAMPLED === 0) expectFigures(plan);
}

/** What must hold of every text given as a plan: it is sound, or it is refused in few and clear words. */
export function expectTakenOrTold(text: string, seen: Seen): void {
  const parsed = parsePlan(text);
  if (parsed.ok) {
    seen.taken += 1;
    expectSound(parsed.value, seen);
    return;
  }
  seen.refused += 1;
  const lines = planFileWords(parsed.error);
  expect(lines.length).toBeGreaterThan(0);
  expect(lines.length).toBeLessThanOrEqual(2 * LIMITS.findings);
  for (const { problem, remedy } of lines) {
    expect(problem).toMatch(/[^ ]\.$/);
    expect(remedy).toMatch(/\.$/);
    expect(problem.length).toBeLessThan(400);
    // What is quoted is the user's own.
    expect(`${problem} ${remedy}`.replace(/".*"/gs, '')).not.toMatch(/undefined|\[object|NaN/);
  }
}
