/// <reference lib="webworker" />
import { expose } from 'comlink';
import { findBottleneck } from '../insight/find-bottleneck.ts';
import { kneeCurve } from '../insight/knee-curve.ts';
import { evaluateScenario, todayWeek } from '../model/evaluate-scenario.ts';
import type { ScenarioOutcome } from '../model/scenario-result.ts';
import type { Plan } from '../plan/plan-types.ts';
import { simulateShop } from '../plant/simulate-shop.ts';
import { byTurns } from '../risk/by-turns.ts';
import { plantMemory } from '../risk/plant-memory.ts';
import { shareWeeks } from './share-weeks.ts';

const KEPT_VARIANTS = 400;

/** Weeks kept with their pictures: today's, which every row is compared with, and those of stages and of larger markets. */
const KEPT_WEEKS = 16;

/** Weeks the engine that waits for the next edit keeps, so that an edit of money alone runs none again [0.8 MB each]. */
const KEPT_BY_WAITING = 120;

const { isWaiting, tell, hear } = shareWeeks(self.name);
const memory = plantMemory(simulateShop, isWaiting ? KEPT_BY_WAITING : KEPT_WEEKS, true, tell);
hear(memory.learn);

/** Weeks of enlarged shops and of other numbers of chambers: an edit of prices or wages alone runs none of them again. */
const takeTurn = byTurns(plantMemory(simulateShop, KEPT_VARIANTS));

function evaluate(plan: Plan, scenarioId: string): ScenarioOutcome {
  return evaluateScenario(plan, scenarioId, todayWeek(plan, memory.simulate), memory.simulate);
}

/** What the page may ask of the engine; it runs in a thread of its own so that typing never waits. */
const api = {
  evaluateScenario: evaluate,
  findBottleneck: (plan: Plan, scenarioId: string) =>
    takeTurn((simulate) => findBottleneck(plan, scenarioId, simulate)),
  kneeCurve: (plan: Plan, scenarioId: string, most: number) =>
    takeTurn((simulate) => kneeCurve(plan, scenarioId, most, simulate)),
};

export type EngineApi = typeof api;

expose(api);
