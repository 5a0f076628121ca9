import { dryMatterHeat, foodConductivity, freezableWater } from '../physics/food-properties.ts';
import { type LoadLaw, loadLaw } from './load-law.ts';
import type { ChamberSpec, ProductSpec } from './types.ts';

/** The frozen core stays near this temperature while it dries [K]; its conductivity changes by 1 % per 5 K. */
const FROZEN_REFERENCE = 248.15;

/** A load of `product` filling every shelf of `chamber`, its frozen and dried properties taken from its composition. */
export function chamberLoad(product: ProductSpec, chamber: ChamberSpec): LoadLaw {
  const { composition } = product;
  const ice = product.form === 'bound' ? 0 : freezableWater(composition, product.unfreezable);
  return loadLaw(product, chamber, foodConductivity(composition, ice, FROZEN_REFERENCE), dryMatterHeat(composition));
}
