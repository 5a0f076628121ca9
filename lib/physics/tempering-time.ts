import { brent } from '../numeric/brent.ts';
import { cos, log, sin } from '../numeric/portable-math.ts';
import { checkSlab, type FreezingCase, type FreezingOutcome } from './freezing-time.ts';

/** Properties of a load that is frozen already. */
export interface TemperingProperties {
  /** Density [kg/m³]. */
  readonly density: number;
  /** Specific heat, with the ice that still forms [J/(kg·K)]. */
  readonly heat: number;
  /** Conductivity [W/(m·K)]. */
  readonly conductivity: number;
}

/** First root ζ of ζ·tan ζ = Bi, between 0 and π/2 [-]. Written without the pole of the tangent. */
export function slabEigenvalue(biot: number): number {
  const outcome = brent((zeta) => zeta * sin(zeta) - biot * cos(zeta), 0, Math.PI / 2);
  if (outcome.kind !== 'root') throw new RangeError(`Biot number must be positive, got ${biot}`);
  return outcome.root;
}

/**
 * Time for the centre of a frozen slab to cool further [s], without a change of phase to wait for: first term of the series for a slab
 * cooled by convection, t = (d²·ρ·c/k)·ln(A/θ)/ζ², ζ·tan ζ = Bi, A = 4·sin ζ/(2ζ + sin 2ζ), θ = (T_c − T_a)/(T_i − T_a).
 * For small Bi it is the lumped exponential d·ρ·c/h·ln(1/θ).
 * Source: heat-conduction-texts. Exact within 1 % once Fo > 0.2; sooner than that the true time is longer, and no less than 0 is returned.
 * Typed `neverFreezes` when the ambient is not below the final temperature. Throws RangeError on a slab of no size.
 */
export function temperingTime(slab: FreezingCase, load: TemperingProperties): FreezingOutcome {
  checkSlab(slab);
  const { ambient, initial, finalCentre, coefficient } = slab;
  if (initial <= finalCentre) return { kind: 'frozen', time: 0 };
  if (!(ambient < finalCentre)) return { kind: 'neverFreezes', ambient, needed: finalCentre };
  const depth = slab.thickness / slab.sides;
  const zeta = slabEigenvalue((coefficient * depth) / load.conductivity);
  const amplitude = (4 * sin(zeta)) / (2 * zeta + sin(2 * zeta));
  const left = (finalCentre - ambient) / (initial - ambient);
  const fourier = Math.max(0, log(amplitude / left) / (zeta * zeta));
  return { kind: 'frozen', time: (fourier * depth * depth * load.density * load.heat) / load.conductivity };
}
