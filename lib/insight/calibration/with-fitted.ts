import type { ChamberSpec, ProductSpec } from '../../plant/types.ts';
import type { FitKey } from './fit-key.ts';

/** A chamber with one fitted value in it; unchanged by keys that belong to products. */
export function chamberWith(chamber: ChamberSpec, key: FitKey, value: number): ChamberSpec {
  switch (key) {
    case 'heatContact':
      return { ...chamber, heat: { ...chamber.heat, contact: value } };
    case 'trapVapourConductance':
      return { ...chamber, trap: { ...chamber.trap, vapourConductance: value } };
    default:
      return chamber;
  }
}

/** A product with one fitted value in it; unchanged by keys that belong to chambers. */
export function productWith(product: ProductSpec, key: FitKey, value: number): ProductSpec {
  switch (key) {
    case 'spread':
    case 'permeability':
    case 'driedConductivity':
      return { ...product, [key]: value };
    case 'desorptionRate':
      return { ...product, desorption: { ...product.desorption, rate: value } };
    default:
      return product;
  }
}
