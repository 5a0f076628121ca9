import { fail, type Result, succeed } from '../result.ts';
import { chamberLoad } from './chamber-load.ts';
import { longestShift, taskTime } from './crew.ts';
import { chamberFreezingTime, freezerFreezingTime } from './freezing-stage.ts';
import { waterToRemove } from './load-law.ts';
import type { PlantProblem } from './report-types.ts';
import type { PreparedLoad } from './shop-state.ts';
import type { ChamberUnitSpec, ShopSpec } from './types.ts';

type Prepared = (unit: ChamberUnitSpec, mixIndex: number) => PreparedLoad;

function prepare(spec: ShopSpec, unit: ChamberUnitSpec, mixIndex: number): Result<PreparedLoad, PlantProblem> {
  const product = spec.mix[mixIndex]?.product;
  if (!product) throw new RangeError(`no product ${mixIndex} in a mix of ${spec.mix.length}`);
  const { chamber } = unit;
  const load = chamberLoad(product, chamber);
  const water = waterToRemove(load);
  const name = { productId: product.id, chamber: chamber.name };
  if (water > chamber.trap.capacity)
    return fail({ kind: 'trapOverfill', ...name, water, capacity: chamber.trap.capacity });
  if (product.desorption.equilibrium >= product.desorption.target) return fail({ kind: 'neverDry', ...name });
  const inChamber = chamberFreezingTime(product, chamber, spec.freezer);
  const inFreezer = spec.freezer ? freezerFreezingTime(product, spec.freezer) : 0;
  if (inChamber === null || inFreezer === null) return fail({ kind: 'freezingImpossible', ...name });
  if (spec.freezer && product.preFrozen && load.wet > spec.freezer.capacity) {
    return fail({ kind: 'freezerTooSmall', productId: product.id, load: load.wet, capacity: spec.freezer.capacity });
  }
  return succeed({ load, chamberFreezing: inChamber, freezerTime: inFreezer });
}

function crewProblem(spec: ShopSpec, wet: number): PlantProblem | null {
  const longest = longestShift(spec.crew);
  for (const task of ['load', 'unload', 'clean'] as const) {
    const needed = taskTime(spec.crew, task, wet);
    if (needed > longest) return { kind: 'nobodyCanDo', task, needed, longestShift: longest };
  }
  return null;
}

/** Every load that may occur, computed once per product and chamber type; the first problem met when one is impossible. */
export function prepareLoads(spec: ShopSpec): Result<Prepared, PlantProblem> {
  const byChamber = new Map<ChamberUnitSpec['chamber'], PreparedLoad[]>();
  const used = spec.mix.map((entry) => entry.share > 0);
  if (!used.includes(true) || spec.groups.every((group) => group.chambers.length === 0))
    return fail({ kind: 'nothingToMake' });
  for (const unit of spec.groups.flatMap((group) => group.chambers)) {
    if (byChamber.has(unit.chamber)) continue;
    const list: PreparedLoad[] = [];
    byChamber.set(unit.chamber, list);
    for (let i = 0; i < used.length; i += 1) {
      if (!used[i]) continue;
      const outcome = prepare(spec, unit, i);
      if (!outcome.ok) return outcome;
      const problem = crewProblem(spec, outcome.value.load.wet);
      if (problem) return fail(problem);
      list[i] = outcome.value;
    }
  }
  return succeed((unit, mixIndex) => (byChamber.get(unit.chamber) as PreparedLoad[])[mixIndex] as PreparedLoad);
}
