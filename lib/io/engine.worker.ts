/// <reference lib="webworker" />
import { expose } from 'comlink';
import { findBottleneck } from '../insight/find-bottleneck.ts';
import { kneeCurve } from '../insight/knee-curve.ts';
import { evaluateScenario, todayWeek } from '../model/evaluate-scenario.ts';
import type { ScenarioOutcome } from '../model/scenario-result.ts';
import type { Plan } from '../plan/plan-types.ts';

/** The week of today's shop as it was last worked out: every row of a plan is compared with it. */
const known: { key: string; week: ReturnType<typeof todayWeek> | null } = { key: '', week: null };

/** What today's week depends on: the first scenario and everything that is not a scenario. */
function todayKey(plan: Plan): string {
  return JSON.stringify({ ...plan, scenarios: plan.scenarios.slice(0, 1), batchLog: [] });
}

function evaluate(plan: Plan, scenarioId: string): ScenarioOutcome {
  const key = todayKey(plan);
  if (key !== known.key || !known.week) {
    known.week = todayWeek(plan);
    known.key = key;
  }
  return evaluateScenario(plan, scenarioId, known.week);
}

/** What the page may ask of the engine; it runs in a thread of its own so that typing never waits. */
const api = { evaluateScenario: evaluate, findBottleneck, kneeCurve };

export type EngineApi = typeof api;

expose(api);
