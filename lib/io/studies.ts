import { baseValues } from '../inputs/base-values.ts';
import type { KneeMap } from '../insight/insight-types.ts';
import { KNEE_MAP_SPEEDS, kneeMap } from '../insight/knee-map.ts';
import { type Dial, dialsFor } from '../insight/turning/dials.ts';
import type { TurningPoint } from '../insight/turning/turning-point.ts';
import type { LenderBasis } from '../model/lender-basis-types.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan } from '../plan/plan-types.ts';
import type { DrawMeasure } from '../risk/draw-measure.ts';
import { drawRequest } from '../risk/draw-request.ts';
import { type DrawSummary, drawSummary } from '../risk/draw-summary.ts';
import type { DrawOutcome, DrawRequest } from '../risk/evaluate-draws.ts';
import type { PumpChoice, PumpSide } from '../risk/pump-side.ts';
import type { ScenarioRisk } from '../risk/scenario-risk.ts';
import { type Tornado, tornado, tornadoRequest } from '../risk/tornado.ts';
import { scenarioKey } from '../views/scenario-key.ts';
import type { WorkPart } from './part-runs.ts';

/** What long work asks of an engine; across threads every answer is a promise. */
export interface StudyEngine {
  readonly evaluateDraws: (request: DrawRequest) => Promise<DrawOutcome[][]>;
  readonly kneeMapOutput: (plan: Plan, scenarioId: string, factor: number, chambers: number) => Promise<number | null>;
  readonly pumpSide: (plan: Plan, scenarioId: string, choice: PumpChoice) => Promise<PumpSide>;
  readonly scenarioRisk: (plan: Plan, scenarioId: string) => Promise<ScenarioRisk | null>;
  readonly turningPoint: (plan: Plan, scenarioId: string, dial: Dial) => Promise<TurningPoint>;
  readonly lenderBasis: (plan: Plan, scenarioId: string) => Promise<LenderBasis | null>;
}

/** Many draws of the uncertain inputs. */
export interface SpreadAnswer {
  readonly summary: DrawSummary;
  readonly outcomes: readonly DrawOutcome[];
  /** The lender's line of the plan [–]. */
  readonly dscrLine: number;
  /** Uncertain inputs that were drawn. */
  readonly inputs: number;
}

export type TornadoMeasure = Extract<DrawMeasure, 'netPresentValue' | 'contribution' | 'lowestCover'>;

/** One input after the other at its low and its high. */
export type TornadoAnswer = Readonly<Record<TornadoMeasure, Tornado>>;

/** The same chambers with a pump each and on one pump. */
export interface PumpSidesAnswer {
  readonly own: PumpSide;
  readonly shared: PumpSide;
}

/** What stress leaves of a scenario. */
export interface StressAnswer {
  /** Null when the scenario cannot run. */
  readonly risk: ScenarioRisk | null;
  /** The lender's line of the plan [–]. */
  readonly dscrLine: number;
}

/** What must be true for a scenario to be worth its money and to satisfy the lender. */
export interface TurningAnswer {
  readonly points: readonly TurningPoint[];
  /** The lender's line of the plan [–]. */
  readonly dscrLine: number;
}

/** Answers by kind of study. */
export interface StudyAnswers {
  readonly spread: SpreadAnswer;
  readonly tornado: TornadoAnswer;
  readonly kneeMap: KneeMap;
  readonly pumpSides: PumpSidesAnswer;
  readonly stress: StressAnswer;
  readonly turning: TurningAnswer;
  /** Null when the scenario cannot run. */
  readonly lenderBasis: LenderBasis | null;
}

export type StudyKind = keyof StudyAnswers;

/** A piece of long work, ready to be done part by part. */
export interface Study<Kind extends StudyKind = StudyKind> {
  readonly kind: Kind;
  /** Equal for equal work: an answer under another key is of something else. */
  readonly key: string;
  readonly parts: readonly WorkPart<StudyEngine>[];
  /** The answer from those of the parts, in their order. */
  readonly gather: (answers: readonly unknown[]) => StudyAnswers[Kind];
}

/** Draws handed to an engine at a time: few, for steady progress; two, because a low and its high belong together. */
const CHUNK = 2;

function drawParts(request: DrawRequest): WorkPart<StudyEngine>[] {
  const count = Math.ceil(request.draws.length / CHUNK);
  return Array.from({ length: count }, (_, k) => {
    const draws = request.draws.slice(k * CHUNK, (k + 1) * CHUNK);
    return { size: draws.length, start: (engine) => engine.evaluateDraws({ ...request, draws }) };
  });
}

/** Outcomes of the one scenario that was asked for. */
function outcomesOf(answers: readonly unknown[]): DrawOutcome[] {
  return (answers as DrawOutcome[][][]).flat().flatMap((row) => row.slice(0, 1));
}

function keyOf(plan: Plan, scenarioId: string, ...more: readonly unknown[]): string {
  return JSON.stringify([scenarioKey(plan, findById(plan.scenarios, scenarioId, 'scenario')), ...more]);
}

/** Makes it when it is first asked for: drawing the inputs takes longer than an edit may, and most edits ask for no study. */
function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** How a scenario's figures spread when every uncertain input takes its chances. @param count draws, best a power of two */
export function spreadStudy(plan: Plan, scenarioId: string, count: number, seed: number): Study<'spread'> {
  const request = once(() => drawRequest(plan, [scenarioId], { count, seed }));
  return {
    kind: 'spread',
    key: keyOf(plan, scenarioId, count, seed),
    get parts() {
      return drawParts(request());
    },
    gather: (answers) => {
      const outcomes = outcomesOf(answers);
      const { dscrLine } = baseValues('financing', plan.financing);
      return { summary: drawSummary(outcomes), outcomes, dscrLine, inputs: request().inputs.length };
    },
  };
}

/** What each uncertain input does alone. */
export function tornadoStudy(plan: Plan, scenarioId: string): Study<'tornado'> {
  const request = once(() => tornadoRequest(plan, [scenarioId]));
  return {
    kind: 'tornado',
    key: keyOf(plan, scenarioId),
    get parts() {
      return drawParts(request());
    },
    gather: (answers) => {
      const outcomes = outcomesOf(answers);
      const of = (measure: TornadoMeasure) => tornado(request().inputs, outcomes, measure);
      return {
        netPresentValue: of('netPresentValue'),
        contribution: of('contribution'),
        lowestCover: of('lowestCover'),
      };
    },
  };
}

/** The knee for pumps of several speeds. @param mostChambers how far to go, ≥ 1 */
export function kneeMapStudy(plan: Plan, scenarioId: string, mostChambers: number): Study<'kneeMap'> {
  const counts = Array.from({ length: mostChambers }, (_, k) => k + 1);
  const places = KNEE_MAP_SPEEDS.flatMap((factor) => counts.map((chambers) => ({ factor, chambers })));
  return {
    kind: 'kneeMap',
    key: keyOf(plan, scenarioId, mostChambers),
    parts: places.map(({ factor, chambers }) => ({
      size: chambers,
      start: (engine) => engine.kneeMapOutput(plan, scenarioId, factor, chambers),
    })),
    gather: (answers) => {
      const outputs = answers as (number | null)[];
      return kneeMap(KNEE_MAP_SPEEDS.map((_, k) => outputs.slice(k * mostChambers, (k + 1) * mostChambers)));
    },
  };
}

/** A scenario's chambers with a pump each, against all on one. */
export function pumpSidesStudy(
  plan: Plan,
  scenarioId: string,
  ownPumpId: string,
  sharedPumpId: string,
): Study<'pumpSides'> {
  const choices: readonly PumpChoice[] = [
    { arrangement: 'own', pumpId: ownPumpId },
    { arrangement: 'shared', pumpId: sharedPumpId },
  ];
  return {
    kind: 'pumpSides',
    key: keyOf(plan, scenarioId, choices),
    parts: choices.map((choice) => ({ size: 1, start: (engine) => engine.pumpSide(plan, scenarioId, choice) })),
    gather: (answers) => {
      const [own, shared] = answers as [PumpSide, PumpSide];
      return { own, shared };
    },
  };
}

/** A scenario under the customary stresses, and with failing pumps. */
export function stressStudy(plan: Plan, scenarioId: string): Study<'stress'> {
  return {
    kind: 'stress',
    key: keyOf(plan, scenarioId),
    parts: [{ size: 1, start: (engine) => engine.scenarioRisk(plan, scenarioId) }],
    gather: ([risk]) => ({
      risk: risk as ScenarioRisk | null,
      dscrLine: baseValues('financing', plan.financing).dscrLine,
    }),
  };
}

/** How much more work a dial is whose weeks have to be run anew. */
const SLOW_DIAL = 8;

/** How far each input may go, one dial after the other. */
export function turningStudy(plan: Plan, scenarioId: string): Study<'turning'> {
  const dials = dialsFor(plan, scenarioId);
  return {
    kind: 'turning',
    key: keyOf(plan, scenarioId),
    parts: dials.map((dial) => ({
      size: dial.isSlow ? SLOW_DIAL : 1,
      start: (engine) => engine.turningPoint(plan, scenarioId, dial),
    })),
    gather: (answers) => {
      const { dscrLine } = baseValues('financing', plan.financing);
      return { points: answers as TurningPoint[], dscrLine };
    },
  };
}

/** What a lender's workbook is made from. */
export function lenderBasisStudy(plan: Plan, scenarioId: string): Study<'lenderBasis'> {
  return {
    kind: 'lenderBasis',
    key: keyOf(plan, scenarioId),
    parts: [{ size: 1, start: (engine) => engine.lenderBasis(plan, scenarioId) }],
    gather: ([basis]) => basis as LenderBasis | null,
  };
}
