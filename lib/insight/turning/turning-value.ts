import { brent } from '../../numeric/brent.ts';

/** Where a figure passes its line as an input is multiplied by a factor. */
export type TurningValue =
  /** It is at or above the line today and falls below it first at `factor`. */
  | { readonly kind: 'turns'; readonly factor: number; readonly again: readonly number[] }
  /** It is below the line today; it would be reached first at `factor`, or nowhere in the range. */
  | { readonly kind: 'alreadyBelow'; readonly factor: number | null; readonly again: readonly number[] }
  /** It stays on today's side in all of the range that can be run. */
  | { readonly kind: 'never' }
  /** There is no such figure: no debt, or a shop that cannot run. */
  | { readonly kind: 'none' };

/** Factors and what the figure is above its line there; null where the shop cannot run or has no such figure. */
export interface Sample {
  readonly factor: number;
  readonly above: number | null;
}

/** Two neighbouring samples on different sides of the line. */
interface Bracket {
  readonly low: Sample;
  readonly high: Sample;
}

function isBelow(above: number): boolean {
  return above < 0;
}

/** Every pair of neighbours between which the line is passed. */
function brackets(samples: readonly Sample[]): Bracket[] {
  return samples.flatMap((high, k) => {
    const low = samples[k - 1];
    if (!low || low.above === null || high.above === null) return [];
    return isBelow(low.above) === isBelow(high.above) ? [] : [{ low, high }];
  });
}

function rootIn({ low, high }: Bracket, above: (factor: number) => number | null, within: number): number {
  // A shop that cannot run at one factor between two at which it can ends the search there.
  const found = brent((factor) => above(factor) ?? 0, low.factor, high.factor, { absolute: within });
  return found.kind === 'noSignChange' ? low.factor : found.root;
}

/** How far a bracket is from today, at factor 1: by its nearer end. */
function distance({ low, high }: Bracket): number {
  if (low.factor <= 1 && high.factor >= 1) return 0;
  return Math.min(Math.abs(low.factor - 1), Math.abs(high.factor - 1));
}

/**
 * The turning value nearest to today's. Nothing is taken for granted of how the figure goes: it is looked at all along the range, each
 * passing of the line between neighbours counts, and those beyond the nearest are told too, as the middle of their
 * neighbours. What happens between two neighbours on the same side is not seen.
 * @param samples in order of factor, today's among them
 * @param above the figure less its line at a factor; null as in `Sample`
 * @param within how closely the factor is found [–]
 */
export function turningValue(
  samples: readonly Sample[],
  above: (factor: number) => number | null,
  within: number,
): TurningValue {
  const today = samples.find(({ factor }) => factor === 1)?.above ?? null;
  if (today === null) return { kind: 'none' };
  const [nearest, ...others] = brackets(samples).sort((a, b) => distance(a) - distance(b));
  const again = others.map(({ low, high }) => (low.factor + high.factor) / 2);
  const kind = isBelow(today) ? 'alreadyBelow' : 'turns';
  if (nearest) return { kind, factor: rootIn(nearest, above, within), again };
  return kind === 'turns' ? { kind: 'never' } : { kind, factor: null, again };
}
