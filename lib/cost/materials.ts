import { requireAmounts, requireFractions } from './require-amounts.ts';

/** One product's week and what its materials cost. */
export interface MaterialTerms {
  readonly batches: number;
  /** Wet food laid on the trays [kg/week]. */
  readonly wetIn: number;
  /** Dry food taken off them [kg/week]. */
  readonly dryOut: number;
  /** As bought [money/kg]. */
  readonly pricePerWetKilogram: number;
  /** Share of what is bought that is trimmed off before the trays, 0 to below 1. */
  readonly trimLoss: number;
  /** Share of the dry food that can be sold, 0–1. */
  readonly saleableYield: number;
  /** [money/kg saleable] */
  readonly packagingPerKilogram: number;
  /** Liners, cleaning agents, anything else per batch [money]. */
  readonly otherPerBatch: number;
}

/** Materials of one product; all costs are positive. */
export interface MaterialCost {
  /** Bought [kg/week]. */
  readonly bought: number;
  /** Can be sold [kg/week]. */
  readonly saleable: number;
  /** [money/week] */
  readonly ingredients: number;
  readonly packaging: number;
  readonly other: number;
  readonly total: number;
}

/**
 * Materials [money/week]: bought = wet on the trays/(1 − trim loss); packaging on what can be sold.
 * Throws RangeError on a negative amount, a yield outside 0–1, or a trim loss of everything.
 */
export function materialCost(terms: MaterialTerms): MaterialCost {
  const { batches, wetIn, dryOut, pricePerWetKilogram, packagingPerKilogram, otherPerBatch } = terms;
  requireAmounts({ batches, wetIn, dryOut, pricePerWetKilogram, packagingPerKilogram, otherPerBatch });
  requireFractions({ trimLoss: terms.trimLoss, saleableYield: terms.saleableYield });
  if (terms.trimLoss === 1) throw new RangeError('trimLoss is 1, which leaves nothing to dry');
  const bought = wetIn / (1 - terms.trimLoss);
  const saleable = dryOut * terms.saleableYield;
  const ingredients = bought * pricePerWetKilogram;
  const packaging = saleable * packagingPerKilogram;
  const other = batches * otherPerBatch;
  return { bought, saleable, ingredients, packaging, other, total: ingredients + packaging + other };
}
