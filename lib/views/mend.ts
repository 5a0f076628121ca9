import { baseValues } from '../inputs/base-values.ts';
import type { Resource } from '../insight/insight-types.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { shiftTime } from '../plan/shift-time.ts';

/** What would give more of a resource, and what that costs by the plan's own lists. */
export interface Mend {
  readonly words: string;
  /** To be bought once [money]; null where the plan has no price. */
  readonly once: number | null;
  /** To be paid every week [money/week]; null where nothing is. */
  readonly weekly: number | null;
}

/** A quarter more is what the relief is reckoned with, so that is what is looked for. */
const MORE = 1.25;

const HOURS_PER_SECOND = 1 / 3600;

function once(words: string, cost: number | null): Mend {
  return { words, once: cost, weekly: null };
}

function chambersOf(scenario: Scenario): number {
  return scenario.chambers.reduce((sum, entry) => sum + entry.count, 0);
}

function pumpsOf(scenario: Scenario): number {
  const chambers = chambersOf(scenario);
  if (scenario.pumpArrangement === 'own') return chambers;
  return scenario.pumpArrangement === 'shared' ? 1 : Math.ceil(chambers / scenario.groupSize);
}

/** The cheapest of some things that gives enough; undefined when none does. */
function cheapest<Item>(items: readonly Item[], isEnough: (item: Item) => boolean, price: (item: Item) => number) {
  return items.filter(isEnough).sort((a, b) => price(a) - price(b))[0];
}

function chamberMend(plan: Plan, scenario: Scenario): Mend {
  const used = scenario.chambers.find((entry) => entry.count > 0)?.chamber ?? '';
  const type = findById(plan.chambers, used, 'chamber type');
  const { price, installation } = baseValues('chamber', type);
  return once(`One more ${type.name}`, price + installation);
}

function pumpMend(plan: Plan, scenario: Scenario): Mend {
  const own = findById(plan.pumps, scenario.pump, 'pump');
  const speed = (pump: Plan['pumps'][number]) => baseValues('pump', pump).speed;
  const price = (pump: Plan['pumps'][number]) => baseValues('pump', pump).price;
  const larger = cheapest(plan.pumps, (pump) => speed(pump) >= MORE * speed(own), price);
  const count = pumpsOf(scenario);
  if (larger) return once(count === 1 ? larger.name : `${count} × ${larger.name}`, count * price(larger));
  return once(`No faster pump in your list; a second ${own.name}`, price(own));
}

function hoseMend(plan: Plan, scenario: Scenario): Mend {
  const carries = (hose: Plan['hoses'][number]) => {
    const { diameter, length } = baseValues('hose', hose);
    return diameter ** 4 / length;
  };
  const price = (hose: Plan['hoses'][number]) => baseValues('hose', hose).price;
  const own = findById(plan.hoses, scenario.hose, 'hose');
  const wider = cheapest(plan.hoses, (hose) => carries(hose) >= MORE * carries(own), price);
  const count = chambersOf(scenario);
  if (wider) return once(`${count} × ${wider.name}`, count * price(wider));
  return once('Shorter or wider hoses; none in your list', null);
}

/** A chamber type that has more of something on the same shelf area. */
function betterChamber(plan: Plan, scenario: Scenario, key: 'trapRatedLoad' | 'heaterPower', noun: string): Mend {
  const share = (type: Plan['chambers'][number]) => {
    const base = baseValues('chamber', type);
    return base[key] / base.shelfArea;
  };
  const price = (type: Plan['chambers'][number]) => baseValues('chamber', type).price;
  const used = scenario.chambers.find((entry) => entry.count > 0)?.chamber ?? '';
  const own = findById(plan.chambers, used, 'chamber type');
  const better = cheapest(plan.chambers, (type) => share(type) >= MORE * share(own), price);
  if (!better) return once(`Chambers with more ${noun}; none in your list`, null);
  return once(`${better.name} instead of ${own.name}`, price(better));
}

function crewMend(plan: Plan, scenario: Scenario): Mend {
  const { wage, onCost, guaranteed } = baseValues('crew', plan.crew);
  const hours = (MORE - 1) * shiftTime(plan, scenario) * HOURS_PER_SECOND;
  const words = `Shifts a quarter longer: ${Math.round(hours)} h a week`;
  return { words, once: null, weekly: guaranteed ? hours * wage * (1 + onCost) : null };
}

/** What would give a scenario a quarter more of one resource, roughly. */
export function mendOf(plan: Plan, scenario: Scenario, resource: Resource): Mend {
  switch (resource) {
    case 'chambers':
      return chamberMend(plan, scenario);
    case 'pump':
      return pumpMend(plan, scenario);
    case 'hose':
      return hoseMend(plan, scenario);
    case 'trap':
      return betterChamber(plan, scenario, 'trapRatedLoad', 'cold');
    case 'heater':
      return betterChamber(plan, scenario, 'heaterPower', 'heat');
    case 'freezer':
      return once('One more freezer, or food bought frozen', plan.freezer && baseValues('freezer', plan.freezer).price);
    case 'crew':
      return crewMend(plan, scenario);
    case 'power':
      return once('A larger supply; ask a licensed electrician', null);
    case 'demand':
      return once('More customers, or another product', null);
  }
}
