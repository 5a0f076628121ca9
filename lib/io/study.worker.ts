/// <reference lib="webworker" />
import { expose } from 'comlink';
import { kneeMapOutput } from '../insight/knee-map-output.ts';
import type { Dial } from '../insight/turning/dials.ts';
import { type TurningPoint, turningPoint } from '../insight/turning/turning-point.ts';
import { evaluateScenario, stageWeeks, todayWeek } from '../model/evaluate-scenario.ts';
import { lenderBasis } from '../model/lender-basis.ts';
import type { LenderBasis } from '../model/lender-basis-types.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan } from '../plan/plan-types.ts';
import { type DrawOutcome, type DrawRequest, evaluateDraws } from '../risk/evaluate-draws.ts';
import { plantMemory } from '../risk/plant-memory.ts';
import { pumpSide } from '../risk/pump-side.ts';
import { type ScenarioRisk, scenarioRisk } from '../risk/scenario-risk.ts';

// Kept from one part to the next, so that draws which differ in money alone go on sharing one simulation.
const memory = plantMemory();

/** What may go wrong with a scenario; null when it cannot be worked out. */
function risk(plan: Plan, scenarioId: string): ScenarioRisk | null {
  const outcome = evaluateScenario(plan, scenarioId, todayWeek(plan, memory.simulate), memory.simulate);
  return outcome.kind === 'computed' ? scenarioRisk(plan, outcome.result, memory.simulate) : null;
}

/** What a scenario's projection is made of; null when it cannot be worked out. */
function basis(plan: Plan, scenarioId: string): LenderBasis | null {
  const scenario = findById(plan.scenarios, scenarioId, 'scenario');
  const weeks = stageWeeks(plan, scenario, todayWeek(plan, memory.simulate), memory.simulate);
  return weeks.ok ? lenderBasis(plan, scenario, weeks.value) : null;
}

/** What the page may ask of a thread that does long work, part by part. */
const api = {
  evaluateDraws: (request: DrawRequest): DrawOutcome[][] => evaluateDraws(request, () => {}, memory),
  kneeMapOutput,
  pumpSide,
  scenarioRisk: risk,
  lenderBasis: basis,
  turningPoint: (plan: Plan, scenarioId: string, dial: Dial): TurningPoint =>
    turningPoint(plan, scenarioId, dial, memory.simulate),
};

export type StudyApi = typeof api;

expose(api);
