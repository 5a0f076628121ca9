import { evaluateScenario } from '../../lib/model/evaluate-scenario.ts';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';

/** Values of one scenario by the id of the output; null where there is none. */
export type GoldenOutputs = Readonly<Record<string, number | null>>;

/** Largest relative difference between two runs of the same code on different machines. */
export const TOLERANCE = 1e-9;

/** What is compared: every quantity that the sheet shows. A new output must be put here, or left out on purpose. */
export const COMPARED: readonly string[] = [
  'batches',
  'dryOut',
  'wetIn',
  'cycleTime',
  'handsOn',
  'chamberUse',
  'effectiveness',
  'waitingForPeople',
  'waitingForPump',
  'vapourLoadMean',
  'vapourLoadPeak',
  'toleranceUse',
  'manifoldPressure95',
  'chamberPressureMean',
  'ceilingByGas',
  'ceilingByTrap',
  'trapFill',
  'pumpHours',
  'peakPower',
  'cost.materials',
  'cost.packaging',
  'cost.electricity',
  'cost.oil',
  'cost.labour',
  'cost.other',
  'cost.total',
  'cost.perKilogram',
  'contribution',
  'perChamberHour',
  'perCrewHour',
  'perBusiestHour',
  'profit',
  'profit.ownerPaid',
  'breakEven',
  'breakEven.withLoans',
  'marginOfSafety',
  'bestMix.gain',
  'bestMix.chamberHour',
  'bestMix.crewHour',
  'capital',
  'payback',
  'payback.discounted',
  'npv',
  'npv.yearly',
  'irr',
  'irr.count',
  'mirr',
  'profitability',
  'cashNeeded',
  'dscr',
  'dscr.room',
  'dscr.ownerPaid',
  'dscr.year1',
  'dscr.year2',
  'dscr.year3',
  'debtService',
  'lowestCash',
  'failures.perYear',
  'failures.downtime',
  'failures.lostBatches',
  'failures.cost',
  'pumpsPerYear',
];

/** The compared outputs of every scenario of a plan, by scenario id. Throws when a scenario cannot be worked out. */
export function goldenOutputs(plan: Plan): Readonly<Record<string, GoldenOutputs>> {
  return Object.fromEntries(plan.scenarios.map(({ id }) => [id, outputsOf(plan, id)]));
}

function outputsOf(plan: Plan, scenarioId: string): GoldenOutputs {
  const outcome = evaluateScenario(plan, scenarioId);
  if (outcome.kind !== 'computed') throw new Error(`${scenarioId}: ${JSON.stringify(outcome.findings)}`);
  const compared = OUTPUTS.filter((output) => COMPARED.includes(output.id));
  return Object.fromEntries(compared.map((output) => [output.id, output.read(outcome.result)]));
}

/** Outputs that differ by more than the tolerance, in words; one that is there on one side only differs. */
export function differences(expected: GoldenOutputs, actual: GoldenOutputs): readonly string[] {
  const ids = new Set([...Object.keys(expected), ...Object.keys(actual)]);
  return [...ids].flatMap((id) => difference(id, expected[id], actual[id]));
}

function difference(id: string, expected: number | null | undefined, actual: number | null | undefined): string[] {
  if (expected === actual) return [];
  if (typeof expected !== 'number' || typeof actual !== 'number')
    return [`${id}: ${expected} was expected, now ${actual}`];
  const error = Math.abs(actual - expected) / Math.max(Math.abs(expected), Math.abs(actual));
  return error <= TOLERANCE ? [] : [`${id}: ${expected} was expected, now ${actual}, off by ${error.toExponential(1)}`];
}
