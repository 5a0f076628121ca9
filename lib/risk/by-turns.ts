import type { Simulate } from '../model/scenario-week.ts';
import { openRun, type ShopRun } from '../plant/simulate-shop.ts';
import type { ShopSpec } from '../plant/types.ts';
import { fail } from '../result.ts';
import type { PlantMemory } from './plant-memory.ts';

/** What a search over many shops has come to: its answer, or that it needs another turn. */
export type Turn<Value> = { readonly isWhole: true; readonly value: Value } | { readonly isWhole: false };

/** Shop time that is run in one turn [s]: two weeks, a third of a run, take a twentieth of a second or so. */
const TURN = 14 * 86_400;

/** Stands for a shop that has not been run yet; whatever is made of it is thrown away. */
const NOT_YET = fail({ kind: 'cannotFollow', pump: '' } as const);

const UNFINISHED = { isWhole: false } as const;

/**
 * Lets a search over many shops be done turn by turn, so that an engine can leave it for something more urgent at any turn. A turn runs the shop
 * in hand for a while; when that is done, the search is begun anew with all the shops it knows by now, until it meets one that it does not.
 * @param memory that keeps every shop of a search; a smaller one would never see its end
 * @returns takes a turn at a search, which for the same shops must always give the same answer
 */
export function byTurns(memory: PlantMemory): <Value>(search: (simulate: Simulate) => Value) => Turn<Value> {
  let inHand: { readonly spec: ShopSpec; readonly run: ShopRun } | null = null;
  const goOn = ({ spec, run }: NonNullable<typeof inHand>): boolean => {
    const outcome = run(TURN);
    if (outcome) memory.keep(spec, outcome);
    return outcome === null;
  };
  return (search) => {
    if (inHand && goOn(inHand)) return UNFINISHED;
    inHand = null;
    const simulate: Simulate = (spec) => {
      const known = memory.recall(spec);
      if (known) return known;
      inHand ??= { spec, run: openRun(spec) };
      return NOT_YET;
    };
    const value = search(simulate);
    return inHand ? UNFINISHED : { isWhole: true, value };
  };
}
