import type { LoggedBatch } from './logged-batches.ts';

/** Batches of one product in one chamber, of like weight, whose hours cannot both be right. */
export interface Contradiction {
  readonly chamber: string;
  readonly product: string;
  /** The two that lie furthest apart. */
  readonly shortest: LoggedBatch;
  readonly longest: LoggedBatch;
  /** How many pairs of the group contradict each other. */
  readonly pairs: number;
}

/** Loads this much alike should take like hours. */
const LIKE_WEIGHT = 1.05;
/** Hours this many times as long are not the same drying. */
const UNLIKE_TIME = 1.5;

function groupsOf(batches: readonly LoggedBatch[]): readonly (readonly LoggedBatch[])[] {
  const groups = new Map<string, LoggedBatch[]>();
  for (const batch of batches) {
    const key = `${batch.chamber} ${batch.product}`;
    groups.set(key, [...(groups.get(key) ?? []), batch]);
  }
  return [...groups.values()];
}

interface Pair {
  readonly shortest: LoggedBatch;
  readonly longest: LoggedBatch;
}

/** Pairs of a group that contradict each other. Sorted by weight, only near neighbours need be compared. */
function pairsOf(group: readonly LoggedBatch[]): readonly Pair[] {
  const byWeight = [...group].sort((a, b) => a.wet - b.wet);
  return byWeight.flatMap((light, i) => {
    const like = byWeight.slice(i + 1).filter((heavy) => heavy.wet <= LIKE_WEIGHT * light.wet);
    return like.flatMap((other) => {
      const [shortest, longest] = light.time <= other.time ? [light, other] : [other, light];
      return longest.time > UNLIKE_TIME * shortest.time ? [{ shortest, longest }] : [];
    });
  });
}

/** Contradictions in a log, at most one to a chamber and product: like loads of which one took half as long again. */
export function contradictions(batches: readonly LoggedBatch[]): readonly Contradiction[] {
  return groupsOf(batches).flatMap((group) => {
    const pairs = pairsOf(group);
    const ratio = ({ shortest, longest }: Pair) => longest.time / shortest.time;
    const worst = [...pairs].sort((a, b) => ratio(b) - ratio(a))[0];
    if (!worst) return [];
    const { chamber, product } = worst.shortest;
    return [{ chamber, product, ...worst, pairs: pairs.length }];
  });
}
