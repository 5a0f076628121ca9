import type { QuantityField } from '../../inputs/input-field.ts';
import { fieldOf } from '../../inputs/register.ts';
import { log } from '../../numeric/portable-math.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { fromBase } from '../../units/convert.ts';
import type { BatchUse, Calibration, ComparedBatch, FittedValue } from './calibration.ts';
import { contradictions } from './contradictions.ts';
import { type DryingSetting, dryingSetting } from './drying-setting.ts';
import { fitLog, type LogFit, USUAL_HOURS_SCATTER } from './fit-log.ts';
import { type FitParameter, fitParameters } from './fit-parameter.ts';
import { type FittedLeaks, fittedLeaks } from './fitted-leaks.ts';
import { fittedValues } from './fitted-values.ts';
import { fittedWaters } from './fitted-waters.ts';
import { LogForecast } from './log-forecast.ts';
import { type LoggedBatch, loggedBatches } from './logged-batches.ts';
import { nextBatches } from './next-batch.ts';
import { oddBatches } from './odd-batches.ts';

/** How far the work has come. How many passes it will take is not known beforehand. */
export interface CalibrationProgress {
  readonly passes: number;
  readonly dryings: number;
}

/** Dryings between two words of progress. */
const TOLD_EVERY = 16;

/** Wet food per shelf area outside of what the register allows is a wrong chamber or a slip of the pen [kg/m²]. */
const loadField = fieldOf('product.load') as QuantityField;

function loadIsPossible(batch: LoggedBatch, setting: DryingSetting): boolean {
  const area = setting.units.get(batch.chamber)?.chamber.shelfArea ?? Number.NaN;
  const load = batch.wet / area;
  return load >= loadField.min && load <= loadField.max;
}

/** The plan with leaks and water as tests and weights tell them: what the hours are then judged with. */
function withMeasured(plan: Plan, values: readonly FittedValue[]): Plan {
  const set = <Item extends { readonly id: string }>(list: FittedValue['list'], items: readonly Item[]): Item[] =>
    items.map((item) => {
      const own = values.filter((value) => value.list === list && value.id === item.id);
      const changed = own.map(({ key, after }) => {
        const { dimension, unit } = fieldOf(`${list === 'chambers' ? 'chamber' : 'product'}.${key}`) as QuantityField;
        return [key, { value: fromBase(after.value, dimension, unit), unit, origin: 'measured' }];
      });
      return changed.length === 0 ? item : { ...item, ...Object.fromEntries(changed) };
    });
  return { ...plan, chambers: set('chambers', plan.chambers), products: set('products', plan.products) };
}

/** Root of the mean square of log measured over log expected hours, as a share. */
function typicalMiss(batches: readonly ComparedBatch[], side: 'before' | 'after'): number {
  const misses = batches.flatMap(({ time, [side]: expected }) => (expected === null ? [] : [log(time / expected)]));
  return Math.sqrt(misses.reduce((sum, miss) => sum + miss * miss, 0) / Math.max(1, misses.length));
}

interface Fitted {
  readonly fit: LogFit;
  readonly odd: readonly LoggedBatch[];
}

/** Fits, sets aside what stands far out, and fits again without it. */
function fitWithoutOdd(batches: readonly LoggedBatch[], bench: Bench, onPass: () => void): Fitted {
  const { parameters, forecast } = bench;
  if (batches.length === 0) return { fit: nothingFitted(parameters), odd: [] };
  const first = fitLog(batches, parameters, forecast, onPass);
  const misses = batches.map((batch) => {
    const drying = forecast.of(batch, first.places);
    return drying ? log(batch.time / drying.time) : 0;
  });
  const odd = oddBatches(batches, misses);
  if (odd.length === 0) return { fit: first, odd };
  const kept = batches.filter((batch) => !odd.includes(batch));
  return { fit: fitLog(kept, parameters, forecast, onPass, first.places), odd };
}

function nothingFitted(parameters: readonly FitParameter[]): LogFit {
  const covariance = parameters.map((_, i) => parameters.map((__, j) => (i === j ? 1 : 0)));
  const places = parameters.map(({ start }) => start);
  return { places, covariance, scatter: USUAL_HOURS_SCATTER, converged: true };
}

/** Everything that dries batches: as the plan has it, and with measured leaks and water and any place of the parameters. */
interface Bench {
  readonly setting: DryingSetting;
  readonly asPlanned: LogForecast;
  readonly parameters: readonly FitParameter[];
  readonly forecast: LogForecast;
}

function benchOf(
  plan: Plan,
  all: readonly LoggedBatch[],
  measured: readonly FittedValue[],
  onDrying: () => void,
): Bench {
  const setting = dryingSetting(withMeasured(plan, measured), all);
  const parameters = fitParameters(plan, all);
  return {
    setting,
    asPlanned: new LogForecast(dryingSetting(plan, all), []),
    parameters,
    forecast: new LogForecast(setting, parameters, onDrying),
  };
}

/** Why a batch cannot be compared with the model at all; null when it can. */
function hindrance(batch: LoggedBatch, { setting, forecast, parameters }: Bench): BatchUse | null {
  if (!loadIsPossible(batch, setting)) return 'loadOutOfRange';
  return forecast.of(
    batch,
    parameters.map(({ start }) => start),
  )
    ? null
    : 'neverDry';
}

function compared(batch: LoggedBatch, bench: Bench, { fit, odd }: Fitted): ComparedBatch {
  const { id, date, chamber, product, wet, time } = batch;
  const hindered = hindrance(batch, bench);
  const use = hindered ?? (odd.includes(batch) ? 'odd' : 'fitted');
  const before = hindered ? null : (bench.asPlanned.of(batch, [])?.time ?? null);
  const after = hindered ? null : (bench.forecast.of(batch, fit.places)?.time ?? null);
  return { id, date, chamber, product, wet, time, before, after, use };
}

function missOf(batches: readonly ComparedBatch[]): Calibration['miss'] {
  const fitted = batches.filter((batch) => batch.use === 'fitted');
  return fitted.length === 0 ? null : { before: typicalMiss(fitted, 'before'), after: typicalMiss(fitted, 'after') };
}

/** A log of pressure-rise tests only, or none at all. */
function withoutBatches({ values, levellingOff }: FittedLeaks): Calibration {
  return {
    batches: [],
    values,
    contradictions: [],
    untested: [],
    levellingOff,
    miss: null,
    scatter: USUAL_HOURS_SCATTER,
    converged: true,
    dryings: 0,
  };
}

/**
 * What the batch log says of the shop: leaks by pressure-rise tests, water by weights, and then heat transfer, spread,
 * permeability, conductivity and last drying by the hours and highest pressures of batches, each with its uncertainty.
 * Every batch is dried by the model alone in its chamber on today's pump and hose; how chambers on one pump hold each other
 * up is not in it. The plan is not changed.
 */
export function calibrate(plan: Plan, onProgress: (progress: CalibrationProgress) => void = () => {}): Calibration {
  const leaks = fittedLeaks(plan);
  const all = loggedBatches(plan);
  if (all.length === 0) return withoutBatches(leaks);
  const measured = [...leaks.values, ...fittedWaters(plan)];
  let passes = 0;
  const tell = () => onProgress({ passes, dryings: bench.forecast.dryings });
  const bench: Bench = benchOf(plan, all, measured, () => {
    if (bench.forecast.dryings % TOLD_EVERY === 0) tell();
  });
  const { parameters, forecast, asPlanned } = bench;
  const onPass = () => {
    passes += 1;
    tell();
  };
  const usable = all.filter((batch) => hindrance(batch, bench) === null);
  const fitted = fitWithoutOdd(usable, bench, onPass);
  const kept = usable.filter((batch) => !fitted.odd.includes(batch));
  const next = nextBatches(parameters, fitted.fit, forecast, kept);
  const batches = all.map((batch) => compared(batch, bench, fitted));
  const tested = new Set(leaks.values.map(({ id }) => id));
  return {
    batches,
    values: [...measured, ...fittedValues(parameters, fitted.fit, kept, next)],
    contradictions: contradictions(kept),
    untested: [...new Set(all.map((batch) => batch.chamber))].filter((id) => !tested.has(id)),
    levellingOff: leaks.levellingOff,
    miss: missOf(batches),
    scatter: fitted.fit.scatter,
    converged: fitted.fit.converged,
    dryings: forecast.dryings + asPlanned.dryings,
  };
}
