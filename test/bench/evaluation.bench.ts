import { bench, describe } from 'vitest';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { serialisePlan } from '../../lib/plan/serialise-plan.ts';
import golden from '../golden/demo-results.json' with { type: 'json' };
import { smallPlan } from '../model/edited-plan.ts';
import { builtModule } from './built-module.ts';
import { requireNear } from './require-near.ts';

const { evaluateScenario } = builtModule<typeof import('../../lib/model/evaluate-scenario.ts')>(
  'lib/model/evaluate-scenario.ts',
);
const { findBottleneck } = builtModule<typeof import('../../lib/insight/find-bottleneck.ts')>(
  'lib/insight/find-bottleneck.ts',
);
const { parsePlan } = builtModule<typeof import('../../lib/plan/parse-plan.ts')>('lib/plan/parse-plan.ts');

const TEXT = serialisePlan(DEMO_PLAN);
const SMALL = smallPlan();

const FEW = { time: 0, iterations: 3, warmupTime: 0, warmupIterations: 1 };
const ONCE = { time: 0, iterations: 1, warmupTime: 0, warmupIterations: 0 };

function requireGolden(scenarioId: 'today' | 'six-shared'): void {
  const outcome = evaluateScenario(DEMO_PLAN, scenarioId);
  if (outcome.kind !== 'computed') throw new Error(JSON.stringify(outcome.findings));
  for (const id of ['dryOut', 'contribution'] as const) {
    const value = OUTPUTS.find((output) => output.id === id)?.read(outcome.result) ?? Number.NaN;
    requireNear(`${scenarioId}: ${id}`, value, golden[scenarioId][id]);
  }
}

requireGolden('today');
requireGolden('six-shared');
if (!parsePlan(TEXT).ok) throw new Error('the demo is a plan');
if (findBottleneck(SMALL, 'two')?.sharedPumpJams !== false) throw new Error('two chambers on a good pump do not jam');

describe('a scenario from plan to payback, its own six weeks and those of today', () => {
  bench('two chambers', () => void evaluateScenario(SMALL, 'two'), FEW);
  bench('six chambers of the demo', () => void evaluateScenario(DEMO_PLAN, 'six-shared'), FEW);
});

describe('where a scenario jams, a dozen runs of six weeks', () => {
  bench('two chambers', () => void findBottleneck(SMALL, 'two'), FEW);
  bench('six chambers of the demo', () => void findBottleneck(DEMO_PLAN, 'six-shared'), ONCE);
});

describe(`a plan read and checked, ${Math.round(TEXT.length / 1000)} kB`, () => {
  bench('parsePlan', () => void parsePlan(TEXT), { time: 500 });
});
