import { findById } from '../plan/find-by-id.ts';
import type { Plan, Product, Scenario } from '../plan/plan-types.ts';
import { shownValue } from '../plan/raw-value.ts';
import type { PlantProblem } from '../plant/report-types.ts';
import { assertNever, type Finding } from '../result.ts';

type Problem<Kind extends PlantProblem['kind']> = Extract<PlantProblem, { readonly kind: Kind }>;

const TASKS: Readonly<Record<string, string>> = { load: 'Loading', unload: 'Unloading', clean: 'Cleaning' };

function finding(field: string, value: string, problem: string, remedy: string): Finding {
  return { severity: 'error', field, value, problem, remedy };
}

function hours(seconds: number): string {
  return `${(seconds / 3600).toFixed(1)} h`;
}

function kilograms(mass: number): string {
  return `${mass.toFixed(1)} kg`;
}

function pascals(pressure: number): string {
  return `${pressure.toPrecision(3)} Pa (${(pressure / 0.1333224).toFixed(0)} mTorr)`;
}

function nameOf(plan: Plan, productId: string): string {
  return findById(plan.products, productId, 'product').name;
}

/** A finding that stands at one entry of a product. */
function ofProduct(plan: Plan, productId: string, key: keyof Product, problem: string, remedy: string): Finding {
  const place = plan.products.findIndex((product) => product.id === productId);
  return finding(`products.${place}.${key}`, shownValue(plan.products[place]?.[key]), problem, remedy);
}

function trapOverfill(plan: Plan, { productId, chamber, water, capacity }: Problem<'trapOverfill'>): Finding {
  return ofProduct(
    plan,
    productId,
    'load',
    `One batch of "${nameOf(plan, productId)}" gives off ${kilograms(water)} of water, but the trap of "${chamber}" holds ${kilograms(capacity)} of ice.`,
    'Load less per tray, or use a chamber whose trap holds more.',
  );
}

function pumpCannotReach(plan: Plan, { pump, pressure, reached }: Problem<'pumpCannotReach'>): Finding {
  return finding(
    `pumps.${plan.pumps.findIndex((type) => type.name === pump)}.speed`,
    pump,
    `"${pump}" only pulls its chambers down to ${pascals(reached)}; drying starts below ${pascals(pressure)}.`,
    'Use a stronger pump, hang fewer chambers on it, or find and mend the leaks.',
  );
}

function cannotFollow(plan: Plan, { pump }: Problem<'cannotFollow'>): Finding {
  return finding(
    `pumps.${plan.pumps.findIndex((type) => type.name === pump)}.speed`,
    pump,
    `The pressures of the chambers on "${pump}" change faster than can be followed.`,
    'Look for an entry far from any real machine: free volume, outgassing, cold surface, hose or pump speed.',
  );
}

function dryingStalls(plan: Plan, { productId, chamber }: Problem<'dryingStalls'>): Finding {
  return ofProduct(
    plan,
    productId,
    'shelfPrimary',
    `A batch of "${nameOf(plan, productId)}" in "${chamber}" is still not dry after ten days.`,
    'Look at the shelf temperature, the pressure ceiling, the leak and the pump: one of them stops the drying.',
  );
}

function neverDry(plan: Plan, { productId }: Problem<'neverDry'>): Finding {
  return ofProduct(
    plan,
    productId,
    'targetMoisture',
    `The moisture asked of "${nameOf(plan, productId)}" is not above the one at which it settles, so it is never reached.`,
    'Ask for a little more moisture, or correct the moisture it settles at.',
  );
}

function nobodyCanDo(plan: Plan, scenario: Scenario, problem: Problem<'nobodyCanDo'>): Finding {
  const place = plan.crew.patterns.findIndex((pattern) => pattern.id === scenario.pattern);
  const { task, needed, longestShift } = problem;
  return finding(
    `crew.patterns.${place}.shifts`,
    hours(longestShift),
    `${TASKS[task] ?? task} takes ${hours(needed)}, longer than the longest shift (${hours(longestShift)}).`,
    'Lengthen a shift, put somebody on it, or load less at a time.',
  );
}

function freezingImpossible(plan: Plan, { productId, chamber }: Problem<'freezingImpossible'>): Finding {
  return ofProduct(
    plan,
    productId,
    'frozenLimit',
    `Neither the shelf of "${chamber}" nor the freezer is cold enough to freeze "${nameOf(plan, productId)}" firmly.`,
    'Freeze colder, or correct the temperature above which its frozen part softens.',
  );
}

function freezerTooSmall(plan: Plan, { productId, load, capacity }: Problem<'freezerTooSmall'>): Finding {
  return finding(
    'freezer.capacity',
    shownValue(plan.freezer?.capacity),
    `One load of "${nameOf(plan, productId)}" weighs ${kilograms(load)}; the freezer holds ${kilograms(capacity)}.`,
    'Use a larger freezer, or load less per tray.',
  );
}

function nothingToMake(plan: Plan, scenario: Scenario): Finding {
  const place = plan.scenarios.findIndex((candidate) => candidate.id === scenario.id);
  return finding(
    `scenarios.${place}.mix`,
    shownValue(scenario.mix),
    'There is no chamber, or no product with a share above zero.',
    'Give the scenario a chamber and a product.',
  );
}

/** A problem of a scenario's week in plain words: which entry of the plan it lies in, what is wrong, what would mend it. */
export function plantFinding(plan: Plan, scenario: Scenario, problem: PlantProblem): Finding {
  switch (problem.kind) {
    case 'trapOverfill':
      return trapOverfill(plan, problem);
    case 'pumpCannotReach':
      return pumpCannotReach(plan, problem);
    case 'dryingStalls':
      return dryingStalls(plan, problem);
    case 'neverDry':
      return neverDry(plan, problem);
    case 'nobodyCanDo':
      return nobodyCanDo(plan, scenario, problem);
    case 'freezingImpossible':
      return freezingImpossible(plan, problem);
    case 'freezerTooSmall':
      return freezerTooSmall(plan, problem);
    case 'cannotFollow':
      return cannotFollow(plan, problem);
    case 'nothingToMake':
      return nothingToMake(plan, scenario);
    default:
      return assertNever(problem);
  }
}
