import { freezableWater } from '../physics/food-properties.ts';
import type { ChamberSpec, ProductSpec } from './types.ts';

/** Source of the dry-matter heat capacity is the composition itself; here it is made ready for the inner loop. */
export interface LoadLaw {
  readonly product: ProductSpec;
  /** Shelf area under the load [m²]. */
  readonly area: number;
  readonly wet: number;
  readonly dryMatter: number;
  /** Ice at the start of primary drying [kg]. */
  readonly ice: number;
  /** Moisture left when the ice is gone [kg/kg dry matter]. */
  readonly boundMoisture: number;
  /** Depth that the slowest face dries [m]; for poured loads the whole layer. */
  readonly depth: number;
  /** Flux on the slowest face per flow from the whole load, tray spread included [1/m²]. */
  readonly fluxPerFlow: number;
  readonly frozenConductivity: number;
  /** Heat capacity of the dry matter per kelvin [J/K]. */
  readonly dryHeatCapacity: number;
  /** Shelf temperature the programme and the chamber both allow [K]. */
  readonly shelfPrimary: number;
  readonly shelfSecondary: number;
}

/** Finished product per batch, its residual moisture included [kg]. */
export function dryOutput(load: LoadLaw): number {
  return load.dryMatter * (1 + load.product.desorption.target);
}

/** Water that must leave the load from frozen to finished [kg]. */
export function waterToRemove(load: LoadLaw): number {
  return load.wet - dryOutput(load);
}

/** Water still in the load at dried fraction `dried` and moisture `moisture` [kg]. */
export function waterInLoad(load: LoadLaw, dried: number, moisture: number): number {
  return load.ice * (1 - dried) + load.dryMatter * moisture;
}

/**
 * Everything about a load of `product` in `chamber` that does not change while it dries.
 * The ice is the water that can freeze; the unfreezable part is left to secondary drying. A bound-water product has no ice.
 */
export function loadLaw(
  product: ProductSpec,
  chamber: ChamberSpec,
  frozenConductivity: number,
  dryHeatCapacity: number,
): LoadLaw {
  const wet = product.load * chamber.shelfArea;
  const solids = 1 - product.composition.water;
  const iceShare = product.form === 'bound' ? 0 : freezableWater(product.composition, product.unfreezable);
  const dryMatter = wet * solids;
  const share = product.form === 'pieces' ? product.faceShare : 1;
  return {
    product,
    area: chamber.shelfArea,
    wet,
    dryMatter,
    ice: wet * iceShare,
    boundMoisture: (product.composition.water - iceShare) / solids,
    depth: (product.load / product.bulkDensity) * share,
    fluxPerFlow: (product.spread * share) / chamber.shelfArea,
    frozenConductivity,
    dryHeatCapacity: dryHeatCapacity * dryMatter,
    shelfPrimary: Math.min(product.shelfPrimary, chamber.shelfLimit),
    shelfSecondary: Math.min(product.shelfSecondary, chamber.shelfLimit),
  };
}
