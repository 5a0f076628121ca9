import { findById } from '../../plan/find-by-id.ts';
import type { Plan, Scenario } from '../../plan/plan-types.ts';
import { type Turnable, turnable } from './turned-plan.ts';

/** Inputs that are turned together by one factor, so that one question can be asked of them. */
export interface Dial {
  /** Such as `price`, or `price bean-soup` for one product alone. */
  readonly id: string;
  readonly kind: DialKind;
  /** Name of the one thing it turns; null when it turns all of a kind. */
  readonly of: string | null;
  /** Where the quantities stand in the plan. */
  readonly paths: readonly string[];
  /** Least and greatest factor that is tried. */
  readonly range: readonly [number, number];
  /** True when its weeks have to be run anew, so that fewer factors are tried. */
  readonly isSlow: boolean;
}

export type DialKind =
  | 'price'
  | 'demand'
  | 'wetCost'
  | 'packaging'
  | 'wage'
  | 'electricity'
  | 'rent'
  | 'chamberPrice'
  | 'pumpPrice'
  | 'interest'
  | 'availability'
  | 'load'
  | 'spread';

interface Kind {
  readonly kind: DialKind;
  /** Factors that are tried, before the register's own range narrows them. */
  readonly range: readonly [number, number];
  readonly isSlow?: boolean;
  readonly paths: (plan: Plan, scenario: Scenario) => string[];
}

function places<Item extends { readonly id: string }>(list: readonly Item[], isIn: (id: string) => boolean): number[] {
  return list.flatMap(({ id }, place) => (isIn(id) ? [place] : []));
}

function ofProducts(key: string): Kind['paths'] {
  return (plan, { mix }) => {
    const made = new Set(mix.filter(({ share }) => share > 0).map(({ product }) => product));
    return places(plan.products, (id) => made.has(id)).map((place) => `products.${place}.${key}`);
  };
}

function chamberPrices(plan: Plan, { chambers }: Scenario): string[] {
  const used = new Set(chambers.filter(({ count }) => count > 0).map(({ chamber }) => chamber));
  return places(plan.chambers, (id) => used.has(id)).map((place) => `chambers.${place}.price`);
}

function newLoans({ financing }: Plan): string[] {
  return financing.loans.flatMap((loan, place) => (loan.basis === 'running' ? [] : [`financing.loans.${place}.rate`]));
}

function electricityPrices({ site }: Plan): string[] {
  return ['site.electricityPrice', ...site.priceBands.map((_, place) => `site.priceBands.${place}.price`)];
}

/** What an owner or a lender asks about, in the order of the table. */
const KINDS: readonly Kind[] = [
  { kind: 'price', range: [0, 3], paths: ofProducts('price') },
  { kind: 'demand', range: [0, 3], isSlow: true, paths: ofProducts('weeklyDemand') },
  { kind: 'wetCost', range: [0, 6], paths: ofProducts('wetCost') },
  { kind: 'packaging', range: [0, 6], paths: ofProducts('packaging') },
  { kind: 'wage', range: [0, 6], paths: () => ['crew.wage'] },
  { kind: 'electricity', range: [0, 8], paths: electricityPrices },
  { kind: 'rent', range: [0, 8], paths: () => ['site.rentAndFixed'] },
  { kind: 'chamberPrice', range: [0, 6], paths: chamberPrices },
  {
    kind: 'pumpPrice',
    range: [0, 20],
    paths: (plan, { pump }) => places(plan.pumps, (id) => id === pump).map((place) => `pumps.${place}.price`),
  },
  { kind: 'interest', range: [0, 6], paths: newLoans },
  { kind: 'availability', range: [0.1, 1.5], isSlow: true, paths: () => ['site.availability'] },
  { kind: 'load', range: [0.3, 1.6], isSlow: true, paths: ofProducts('load') },
  { kind: 'spread', range: [0.5, 3], isSlow: true, paths: ofProducts('spread') },
];

/** The factors within which at least one of the quantities still moves inside its own range of the register. */
function narrowed(found: readonly Turnable[], [low, high]: Kind['range']): readonly [number, number] {
  const least = Math.min(...found.map(({ min, value }) => min / value));
  const most = Math.max(...found.map(({ max, value }) => max / value));
  return [Math.max(low, least), Math.min(high, most)];
}

function dialOf(plan: Plan, { kind, range, isSlow = false }: Kind, paths: readonly string[], of: Named | null): Dial[] {
  const found = paths.flatMap((path) => turnable(plan, path) ?? []);
  if (found.length === 0) return [];
  const id = of ? `${kind} ${of.id}` : kind;
  const shown = narrowed(found, range);
  return [{ id, kind, of: of?.name ?? null, paths: found.map(({ path }) => path), range: shown, isSlow }];
}

interface Named {
  readonly id: string;
  readonly name: string;
}

/** One dial for all of a kind; for prices one for each product too, where there are several. */
function dialsOf(plan: Plan, scenario: Scenario, kind: Kind): Dial[] {
  const paths = kind.paths(plan, scenario);
  const all = dialOf(plan, kind, paths, null);
  if (kind.kind !== 'price' || paths.length < 2) return all;
  const each = paths.flatMap((path) => {
    const product = plan.products[Number(path.split('.')[1])];
    return product ? dialOf(plan, kind, [path], product) : [];
  });
  return [...all, ...each];
}

/** The questions to ask of a scenario. What is 0 or not in it is left out. Throws RangeError when the plan has no such scenario. */
export function dialsFor(plan: Plan, scenarioId: string): Dial[] {
  const scenario = findById(plan.scenarios, scenarioId, 'scenario');
  return KINDS.flatMap((kind) => dialsOf(plan, scenario, kind));
}
