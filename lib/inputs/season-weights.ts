import type { FieldValues } from './field-values.ts';
import type { SEASON_FIELDS } from './fields/season.ts';

/** Weight of each calendar month in the demand for a product, January first; only the proportions count. */
export function seasonWeights(product: FieldValues<typeof SEASON_FIELDS>): readonly number[] {
  return [
    product.seasonJan,
    product.seasonFeb,
    product.seasonMar,
    product.seasonApr,
    product.seasonMay,
    product.seasonJun,
    product.seasonJul,
    product.seasonAug,
    product.seasonSep,
    product.seasonOct,
    product.seasonNov,
    product.seasonDec,
  ];
}
