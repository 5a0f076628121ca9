import type { Scenario } from '../../plan/plan-types.ts';
import type { ChamberRange, OptionChoice, OptionSpace } from './option-types.ts';

type Chambers = OptionChoice['chambers'];
type Tied = Pick<OptionChoice, 'pumpArrangement' | 'groupSize'>;
type Started = Pick<OptionChoice, 'startPractice' | 'roughingPump'>;

/** Every mixture of chambers within the ranges and the number allowed in all. */
function* chamberMixes(ranges: readonly ChamberRange[], most: number): Generator<Chambers> {
  const [range, ...rest] = ranges;
  if (!range) {
    yield [];
    return;
  }
  const taken = rest.reduce((sum, { least }) => sum + least, 0);
  for (let count = range.least; count <= Math.min(range.most, most - taken); count += 1) {
    const own = count > 0 ? [{ chamber: range.chamber, count }] : [];
    for (const others of chamberMixes(rest, most - count)) yield [...own, ...others];
  }
}

/** Every way to tie a number of chambers to pumps; ways that come to the same are named once. */
function* ties(arrangements: readonly Scenario['pumpArrangement'][], chambers: number): Generator<Tied> {
  const [only] = arrangements;
  if (chambers === 1 && only) {
    yield { pumpArrangement: arrangements.includes('own') ? 'own' : 'shared', groupSize: 2 };
    return;
  }
  if (arrangements.includes('own')) yield { pumpArrangement: 'own', groupSize: 2 };
  if (arrangements.includes('shared')) yield { pumpArrangement: 'shared', groupSize: 2 };
  if (!arrangements.includes('groups')) return;
  for (let groupSize = 2; groupSize < chambers; groupSize += 1) yield { pumpArrangement: 'groups', groupSize };
}

/** Ways to start. Where every chamber has its own pump there are no others to isolate or to flood: those two are one. */
function* starts(space: OptionSpace, ownPumps: boolean): Generator<Started> {
  const plain = space.practices.filter((practice) => practice !== 'roughing');
  for (const startPractice of ownPumps ? plain.slice(0, 1) : plain) yield { startPractice, roughingPump: null };
  if (!space.practices.includes('roughing')) return;
  for (const roughingPump of space.roughingPumps) yield { startPractice: 'roughing', roughingPump };
}

function* equipped(space: OptionSpace, chambers: Chambers, tied: Tied): Generator<OptionChoice> {
  for (const pump of space.pumps) {
    for (const hose of space.hoses) {
      for (const pattern of space.patterns) {
        for (const started of starts(space, tied.pumpArrangement === 'own')) {
          for (let freezers = space.freezers.least; freezers <= space.freezers.most; freezers += 1) {
            for (const sparePump of space.spares) {
              yield { chambers, ...tied, pump, hose, pattern, ...started, freezers, sparePump };
            }
          }
        }
      }
    }
  }
}

/**
 * The options of a space, one after the other, none twice: made when they are asked for, so that a large space needs no room. Set-ups
 * that are the same thing under two names – a group of all, groups of one – come once.
 */
export function* optionChoices(space: OptionSpace): Generator<OptionChoice> {
  for (const chambers of chamberMixes(space.chambers, space.mostChambers)) {
    const count = chambers.reduce((sum, entry) => sum + entry.count, 0);
    if (count === 0) continue;
    for (const tied of ties(space.arrangements, count)) yield* equipped(space, chambers, tied);
  }
}

/** Part of a space: all options of one mixture of chambers. */
export interface SpaceSlice {
  readonly space: OptionSpace;
  /** Place of its first option in the order of the whole space. */
  readonly firstPlace: number;
}

/** A space cut into slices that together hold every option once, for work in parts; mixtures without a chamber are left out. */
export function spaceSlices(space: OptionSpace): SpaceSlice[] {
  const slices: SpaceSlice[] = [];
  let firstPlace = 0;
  for (const mix of chamberMixes(space.chambers, space.mostChambers)) {
    const counts = new Map(mix.map(({ chamber, count }) => [chamber, count]));
    const fixed = ({ chamber }: ChamberRange) => counts.get(chamber) ?? 0;
    const chambers = space.chambers.map((range) => ({ ...range, least: fixed(range), most: fixed(range) }));
    const slice = { ...space, chambers };
    slices.push({ space: slice, firstPlace });
    firstPlace += countChoices(slice, Number.POSITIVE_INFINITY);
  }
  return slices.filter((slice) => slice.space.chambers.some(({ most }) => most > 0));
}

/** Number of options of a space, counted no further than `most`. */
export function countChoices(space: OptionSpace, most: number): number {
  let count = 0;
  for (const _ of optionChoices(space)) {
    count += 1;
    if (count >= most) break;
  }
  return count;
}
