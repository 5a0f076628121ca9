import { pow } from '../../numeric/portable-math.ts';
import { ODDS_SCALE } from './fit-scale.ts';
import type { LoggedBatch } from './logged-batches.ts';
import type { Prior } from './prior.ts';
import { scatter } from './scatter.ts';

/** Water of a product by what its batches weighed, on the odds scale. */
export interface WaterEstimate {
  readonly place: number;
  readonly deviation: number;
  readonly weighings: number;
}

/** How far dry over wet differs from batch to batch, as a share: ripeness and scales. Common practice, no source. */
const USUAL_SCATTER = 0.03;

/** Rounds in which scatter and mean are found together. */
const ROUNDS = 5;

/** Water that a batch lets conclude, on the odds scale; none when it is heavier than its dry matter could be. */
function placeOf(batch: LoggedBatch, target: number): number[] {
  const solids = batch.dry / batch.wet / (1 + target);
  return solids > 0 && solids < 1 ? [ODDS_SCALE.to(1 - solids)] : [];
}

/**
 * Share of water in the wet food from wet and dry weights, w = 1 − dry/(wet·(1 + m)), with the final moisture m that the
 * product aims at: weights alone cannot tell wetter food from a wetter end. Belief and weighings are averaged by how well
 * each is known. Source: gelman-bayesian-data-analysis, ch. 2.
 * @param target final moisture [kg/kg dry]
 */
export function waterFromWeights(batches: readonly LoggedBatch[], target: number, prior: Prior): WaterEstimate | null {
  const places = batches.flatMap((batch) => placeOf(batch, target));
  if (places.length === 0) return null;
  const mean = places.reduce((sum, place) => sum + place, 0) / places.length;
  const belief = pow(prior.spread, -2);
  let place = prior.centre;
  let weight = belief;
  for (let round = 0; round < ROUNDS; round += 1) {
    // A share s of the weight of the solids is s/w on the odds scale.
    const water = ODDS_SCALE.from(place);
    const residuals = places.map((value) => (value - mean) * water);
    const each = pow(scatter(residuals, USUAL_SCATTER, 1) / water, -2);
    weight = belief + places.length * each;
    place = (belief * prior.centre + places.length * each * mean) / weight;
  }
  return { place, deviation: 1 / Math.sqrt(weight), weighings: places.length };
}
