import { monthlyDemand } from '../../cost/monthly-demand.ts';
import { baseValues } from '../../inputs/base-values.ts';
import { demandTerms, runningWeeksPerMonth, startMonth } from '../../model/market.ts';
import { solveLinearProgram } from '../../numeric/linear-program.ts';
import { findById } from '../../plan/find-by-id.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { onShiftTime, WEEK } from '../../plant/crew.ts';
import type { ShopSpec } from '../../plant/types.ts';
import { handsPrice, type Making } from './making.ts';

/** Months of the plan, the first included and the last not. */
export interface Span {
  readonly from: number;
  readonly until: number;
}

/**
 * Batches count by the part of their time within the measured weeks, hands by the minute. A chamber's first batch may be loaded before
 * them, its last unloaded and cleaned after them: together one batch whose hands the weeks do not hold.
 */
const HANDS_OUTSIDE = 1;

/** As much again where a product has no batch that ends within them, so that the accounts give it no hands at all. */
const HANDS_NOT_TOLD = 1;

/** What the solver may be off by [–]. */
const SOLVED_WITHIN = 1e-6;

/** What the market takes of a product over some months [kg]; null for no limit. */
export function demandIn(plan: Plan, productId: string, { from, until }: Span): number | null {
  const terms = demandTerms(findById(plan.products, productId, 'product'));
  if (terms.perMonth === null) return null;
  const months = Array.from({ length: until - from }, (_, k) => monthlyDemand(terms, startMonth(plan), from + k) ?? 0);
  return months.reduce((sum, month) => sum + month, 0);
}

/** What goods that lie in store at the start of a span may fetch in it [money]. */
function inStore(plan: Plan): number {
  return plan.products.reduce((sum, product) => {
    const { unsold, mostKept, price } = baseValues('product', product);
    return unsold === 'keep' ? sum + mostKept * price : sum;
  }, 0);
}

interface Room {
  readonly uses: readonly (readonly number[])[];
  readonly limits: readonly number[];
}

function chamberRoom(spec: ShopSpec, ways: readonly Making[], weeks: number): Room {
  const counts = new Map<string, number>();
  for (const { chamber } of spec.groups.flatMap((group) => group.chambers)) {
    counts.set(chamber.typeId, (counts.get(chamber.typeId) ?? 0) + 1);
  }
  return {
    uses: [...counts.keys()].map((id) => ways.map((way) => (way.chamberId === id ? way.cycle : 0))),
    limits: [...counts.values()].map((count) => count * WEEK * weeks),
  };
}

function marketRoom(plan: Plan, ways: readonly Making[], span: Span): Room {
  const ids = [...new Set(ways.map((way) => way.productId))];
  const limited = ids.flatMap((id) => {
    const demand = demandIn(plan, id, span);
    return demand === null ? [] : [{ id, demand }];
  });
  return {
    uses: limited.map(({ id }) => ways.map((way) => (way.productId === id ? way.saleable : 0))),
    limits: limited.map(({ demand }) => demand),
  };
}

/** The best that batches can bring in the room there is [money]; infinite when the program cannot be solved. */
function mostGained(ways: readonly Making[], gain: (way: Making) => number, room: Room): number {
  // What brings nothing is best not made; without it the program is smaller.
  const worth = ways.map((way, k) => ({ gain: gain(way), k })).filter((way) => way.gain > 0);
  if (worth.length === 0) return 0;
  const uses = room.uses.map((row) => worth.map(({ k }) => row[k] ?? 0));
  const outcome = solveLinearProgram({ gain: worth.map((way) => way.gain), uses, limits: room.limits });
  return outcome.kind === 'optimal' ? outcome.value : Number.POSITIVE_INFINITY;
}

/**
 * More than sales less running cost can come to over some months [money], however the week goes: the best batches that chambers, hands
 * and market have room for, every batch as quick as it can be, people always there when a chamber calls within their hours in
 * all, no current, no oil, no failing pump, and the cheaper of two ways to see the hands: paid but for the owner's hours, or free.
 * A linear program; infinite when it cannot be solved.
 * @param ways every batch the shop could make, see `makings`
 */
export function marginCeiling(plan: Plan, spec: ShopSpec, span: Span, ways: readonly Making[]): number {
  const weeks = runningWeeksPerMonth(plan) * Math.max(0, span.until - span.from);
  if (weeks <= 0) return 0;
  const all = ways.filter((way) => Number.isFinite(way.cycle));
  const chambers = spec.groups.reduce((sum, group) => sum + group.chambers.length, 0);
  const longest = all.reduce((most, way) => Math.max(most, way.hands), 0);
  const edge = (chambers * longest) / spec.measuredWeeks;
  const rooms = [chamberRoom(spec, all, weeks), marketRoom(plan, all, span)];
  const room = {
    uses: [...rooms.flatMap(({ uses }) => uses), all.map((way) => way.hands)],
    limits: [...rooms.flatMap(({ limits }) => limits), weeks * (onShiftTime(spec.crew) + HANDS_OUTSIDE * edge)],
  };
  const price = handsPrice(plan);
  const { ownerAtChambers } = baseValues('crew', plan.crew);
  const unpaid = price * weeks * (ownerAtChambers + (HANDS_OUTSIDE + HANDS_NOT_TOLD) * edge);
  const handsPaid = mostGained(all, (way) => way.margin - price * way.hands, room) + unpaid;
  const handsFree = mostGained(all, (way) => way.margin, room);
  return Math.min(handsPaid, handsFree) * (1 + SOLVED_WITHIN) + inStore(plan);
}
