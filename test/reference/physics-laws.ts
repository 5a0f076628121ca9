import { brent } from '../../lib/numeric/brent.ts';
import { carnotCoefficient } from '../../lib/physics/carnot-coefficient.ts';
import { clelandEarleTime } from '../../lib/physics/cleland-earle-time.ts';
import { GAS_CONSTANT, WATER_FUSION_HEAT, WATER_MOLAR_MASS } from '../../lib/physics/constants.ts';
import { desorptionTime, moistureAfter } from '../../lib/physics/desorption.ts';
import { ductSublimation, pressureRiseConstant } from '../../lib/physics/duct-sublimation.ts';
import { equalisedPressure } from '../../lib/physics/equalised-pressure.ts';
import type { Composition } from '../../lib/physics/food-components.ts';
import { foodEnthalpy } from '../../lib/physics/food-enthalpy.ts';
import { foodConductivity, foodDensity, foodHeat, iceFraction } from '../../lib/physics/food-properties.ts';
import { type FreezingOutcome, freezingTime } from '../../lib/physics/freezing-time.ts';
import { frostConductivity, laminarFrostConductivity } from '../../lib/physics/frost-conductivity.ts';
import { ballastTolerance, printedBallastTolerance, vapourCapacity } from '../../lib/physics/gas-ballast.ts';
import {
  airViscosity,
  chokedSpeed,
  freePathPressure,
  gasMixture,
  meanMolecularSpeed,
  vapourViscosity,
  wilkeFactor,
} from '../../lib/physics/gas-mixture.ts';
import { shelfTransfer } from '../../lib/physics/heat-transfer.ts';
import { hoseConductance, hoseLaw, hoseThroughput } from '../../lib/physics/hose-conductance.ts';
import { sublimationHeat } from '../../lib/physics/ice-latent-heat.ts';
import { icePressure } from '../../lib/physics/ice-pressure.ts';
import { iceTemperature } from '../../lib/physics/ice-temperature.ts';
import { leakRate } from '../../lib/physics/leak-rate.ts';
import { plankTime } from '../../lib/physics/plank-time.ts';
import { hosePumpDownTime, pumpDownPressure, pumpDownTime } from '../../lib/physics/pump-down.ts';
import { driedThickness, frontPressure, frontTime, growingResistanceTime } from '../../lib/physics/retreating-front.ts';
import { seriesConductance } from '../../lib/physics/series-conductance.ts';
import { slabEigenvalue, temperingTime } from '../../lib/physics/tempering-time.ts';
import { grownIce, trapIceThickness, trapSurface } from '../../lib/physics/trap-ice.ts';
import { vapourVolume } from '../../lib/physics/vapour-volume.ts';
import type { Law } from './measure.ts';

type Inputs = Readonly<Record<string, number>>;

/** An input by name; a row that lacks it is wrong. */
function get(inputs: Inputs, name: string): number {
  const value = inputs[name];
  if (value === undefined) throw new RangeError(`reference row lacks the input ${name}`);
  return value;
}

/** Named inputs as the object a law takes; missing ones fail in `get`. */
function pick<Name extends string>(inputs: Inputs, ...names: readonly Name[]): Record<Name, number> {
  return Object.fromEntries(names.map((name) => [name, get(inputs, name)])) as Record<Name, number>;
}

function composition(inputs: Inputs): Composition {
  const { water = 0, protein = 0, fat = 0, carbohydrate = 0, fibre = 0, ash = 0 } = inputs;
  return { water, protein, fat, carbohydrate, fibre, ash };
}

function root(f: (x: number) => number, low: number, high: number): number {
  const outcome = brent(f, low, high);
  if (outcome.kind !== 'root') throw new RangeError(`no root between ${low} and ${high}`);
  return outcome.root;
}

function timeOf(outcome: FreezingOutcome): number {
  if (outcome.kind !== 'frozen') throw new RangeError(`never freezes at ${outcome.ambient} K`);
  return outcome.time;
}

function slab(inputs: Inputs) {
  const names = ['thickness', 'coefficient', 'ambient', 'initial', 'finalCentre'] as const;
  return { ...pick(inputs, ...names), sides: get(inputs, 'sides') === 1 ? (1 as const) : (2 as const) };
}

const vessel = (inputs: Inputs) => pick(inputs, 'volume', 'speed', 'ultimate', 'leak', 'start');

const ballast = (inputs: Inputs) =>
  pick(inputs, 'speed', 'ballast', 'saturation', 'ambientVapour', 'exhaust', 'atmosphere');

const growing = (inputs: Inputs) => pick(inputs, 'ice', 'surface', 'slope', 'driving');

/** Ice temperature where shelf heat and sublimation balance: K·(T_shelf − T) = L·(p_ice(T) − p)/R. */
function coupledIce(inputs: Inputs): number {
  const { transfer, shelf, pressure, resistance } = pick(inputs, 'transfer', 'shelf', 'pressure', 'resistance');
  return root(
    (T) => transfer * (shelf - T) - (sublimationHeat(T) * (icePressure(T) - pressure)) / resistance,
    200,
    273,
  );
}

/** Front temperature of a slab whose dried layer carries heat in and vapour out. */
function frontTemperature(inputs: Inputs): number {
  const { conductivity, surface, ambient, permeability } = pick(
    inputs,
    'conductivity',
    'surface',
    'ambient',
    'permeability',
  );
  const excess = (front: number) =>
    icePressure(front) -
    frontPressure({ conductivity, surface, front, heat: sublimationHeat(front) }, ambient, permeability);
  return root(excess, 220, 273);
}

function hoseFlow(inputs: Inputs): number {
  const out = { flow: 0, byUpstream: 0, byDownstream: 0 };
  const law = hoseLaw(get(inputs, 'diameter'), get(inputs, 'length'), get(inputs, 'temperature'));
  hoseThroughput(law, get(inputs, 'upstream'), get(inputs, 'downstream'), get(inputs, 'vapourFraction'), out);
  return out.flow;
}

/** Every law a physics row may name. */
export const PHYSICS_LAWS: Readonly<Record<string, Law>> = {
  'ice pressure': (x) => icePressure(get(x, 'T')),
  'ice temperature': (x) => iceTemperature(get(x, 'p')),
  'heat of sublimation': (x) => sublimationHeat(get(x, 'T')),
  'molar heat of sublimation': (x) => sublimationHeat(get(x, 'T')) * WATER_MOLAR_MASS,
  'vapour volume': (x) => vapourVolume(get(x, 'p'), get(x, 'T')),
  'component conductivity': (x) => foodConductivity(composition(x), x.ice ?? 0, get(x, 'T')),
  'component density': (x) => foodDensity(composition(x), x.ice ?? 0, get(x, 'T')),
  'component specific heat': (x) => foodHeat(composition(x), x.ice ?? 0, get(x, 'T')),
  'food specific heat': (x) => foodHeat(composition(x), x.ice ?? 0, get(x, 'T')),
  'food latent heat': (x) => get(x, 'water') * WATER_FUSION_HEAT,
  'ice fraction': (x) => iceFraction(composition(x), get(x, 'initialFreezing'), get(x, 'T')),
  'food enthalpy change': (x) =>
    foodEnthalpy(composition(x), get(x, 'initialFreezing'), get(x, 'from')) -
    foodEnthalpy(composition(x), get(x, 'initialFreezing'), get(x, 'to')),
  'freezing time, Plank': (x) =>
    plankTime(pick(x, 'thickness', 'coefficient', 'ambient', 'freezing', 'conductivity', 'heat')),
  'freezing time, Cleland-Earle': (x) => {
    const names = ['thickness', 'coefficient', 'ambient', 'freezing', 'conductivity', 'heat'] as const;
    return clelandEarleTime(pick(x, ...names, 'initial', 'unfrozenCapacity', 'frozenCapacity'));
  },
  'freezing time, Pham': (x) => {
    const densities = ['unfrozenDensity', 'unfrozenHeat', 'frozenDensity', 'frozenHeat'] as const;
    return timeOf(freezingTime(slab(x), pick(x, ...densities, 'frozenConductivity', 'latentHeat')));
  },
  'first eigenvalue of a slab': (x) => slabEigenvalue(get(x, 'biot')),
  'tempering time': (x) => timeOf(temperingTime(slab(x), pick(x, 'density', 'heat', 'conductivity'))),
  'air viscosity': (x) => airViscosity(get(x, 'T')),
  'vapour viscosity': (x) => vapourViscosity(get(x, 'T')),
  'Wilke factor': (x) => wilkeFactor(get(x, 'viscosityA'), get(x, 'viscosityB'), get(x, 'massA'), get(x, 'massB')),
  'mean molecular speed': (x) => meanMolecularSpeed(get(x, 'vapourFraction'), get(x, 'T')),
  'free path × pressure': (x) => freePathPressure(gasMixture(get(x, 'T')), get(x, 'vapourFraction')),
  'choked speed': (x) => chokedSpeed(get(x, 'vapourFraction'), get(x, 'T')),
  'hose conductance': (x) =>
    (x.parallel ?? 1) *
    hoseConductance(
      get(x, 'diameter'),
      get(x, 'length'),
      get(x, 'meanPressure'),
      get(x, 'vapourFraction'),
      get(x, 'temperature'),
    ),
  'choked hose flow': (x) => (hoseFlow(x) * WATER_MOLAR_MASS) / (GAS_CONSTANT * get(x, 'temperature')),
  'conductances in series': (x) => seriesConductance([get(x, 'first'), get(x, 'second')]),
  'pump-down time': (x) => pumpDownTime(vessel(x), get(x, 'target')),
  'pump-down pressure': (x) => pumpDownPressure(vessel(x), get(x, 'time')),
  'pump-down time through a hose': (x) => hosePumpDownTime(vessel(x), get(x, 'viscous'), get(x, 'target')),
  'pressure after a valve opens': (x) =>
    equalisedPressure([get(x, 'volume1'), get(x, 'volume2')], [get(x, 'pressure1'), get(x, 'pressure2')]),
  'leak from pressure rise': (x) => leakRate(get(x, 'volume'), get(x, 'rise'), get(x, 'time')),
  'vapour tolerance, derived': (x) => ballastTolerance(ballast(x)),
  'vapour tolerance, printed': (x) => printedBallastTolerance(ballast(x)),
  'vapour capacity': (x) => vapourCapacity(get(x, 'speed'), get(x, 'vapourPressure'), get(x, 'temperature')),
  'shelf heat transfer': (x) =>
    shelfTransfer(pick(x, 'contact', 'pressureSlope', 'pressureDamping', 'radiation'), get(x, 'p')),
  'coupled ice temperature': coupledIce,
  'coupled flux': (x) => (icePressure(coupledIce(x)) - get(x, 'pressure')) / get(x, 'resistance'),
  'front temperature': frontTemperature,
  'front pressure': (x) => icePressure(frontTemperature(x)),
  'front drying time': (x) => {
    const front = get(x, 'front');
    const parts = { ...pick(x, 'conductivity', 'surface'), front, heat: sublimationHeat(front) };
    return frontTime(parts, get(x, 'ice'), get(x, 'depth'));
  },
  'drying time, growing resistance': (x) => growingResistanceTime(growing(x), get(x, 'depth')),
  'dried thickness, growing resistance': (x) => driedThickness(growing(x), get(x, 'time')),
  'moisture in desorption': (x) =>
    moistureAfter(get(x, 'start'), get(x, 'equilibrium'), get(x, 'rate'), get(x, 'time')),
  'desorption time': (x) => desorptionTime(get(x, 'start'), get(x, 'target'), get(x, 'equilibrium'), get(x, 'rate')),
  'Carnot coefficient': (x) => carnotCoefficient(get(x, 'evaporating'), get(x, 'condensing')),
  'frost conductivity': (x) => frostConductivity(get(x, 'density')),
  'frost conductivity, dense': (x) => laminarFrostConductivity(get(x, 'density')),
  'trap ice thickness': (x) => trapIceThickness(get(x, 'ice'), get(x, 'area'), get(x, 'density')),
  'warming through trap ice': (x) =>
    trapSurface(0, get(x, 'load'), get(x, 'area'), get(x, 'thickness'), get(x, 'conductivity')),
  'ice growth': (x) =>
    grownIce(get(x, 'conductivity'), get(x, 'difference'), get(x, 'density'), get(x, 'heat'), get(x, 'time')),
  'flow from ice to trap': (x) =>
    ductSublimation({
      icePressure: icePressure(get(x, 'ice')),
      trapPressure: icePressure(get(x, 'trap')),
      ...pick(x, 'resistance', 'area', 'conductance', 'temperature'),
    }),
  'pressure-rise constant': (x) =>
    pressureRiseConstant(get(x, 'volume'), get(x, 'resistance'), get(x, 'area'), get(x, 'temperature')),
  'flux from heat': (x) => (get(x, 'heatFlux') * get(x, 'area')) / sublimationHeat(get(x, 'T')),
};
