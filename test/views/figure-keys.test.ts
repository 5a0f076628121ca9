import { describe, expect, it } from 'vitest';
import { evaluateScenario } from '../../lib/model/evaluate-scenario.ts';
import { setAtPath } from '../../lib/plan/commands/set-at-path.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan, Product } from '../../lib/plan/plan-types.ts';
import { FigureKeys, type ScenarioKeys } from '../../lib/views/figure-keys.ts';

const KEYS = new FigureKeys();

/** The demo, where a product of its own is made in two of the rows. */
function withMangoes(change: Partial<Product> = {}): Plan {
  const [first] = DEMO_PLAN.products;
  if (!first) throw new Error('the demo has no product');
  const mangoes = { ...first, id: 'mangoes', name: 'Mangoes', ...change };
  const scenarios = DEMO_PLAN.scenarios.map((scenario, place) =>
    place === 1 || place === 3 ? { ...scenario, mix: [...scenario.mix, { product: 'mangoes', share: 10 }] } : scenario,
  );
  return { ...DEMO_PLAN, products: [...DEMO_PLAN.products, mangoes], scenarios };
}

/** Places of the rows whose key differs. */
function changedRows(before: Plan, after: Plan, key: keyof ScenarioKeys = 'figures'): number[] {
  return before.scenarios.flatMap((scenario, place) => {
    const next = after.scenarios[place];
    return next && KEYS.of(before, scenario)[key] === KEYS.of(after, next)[key] ? [] : [place];
  });
}

function changed(path: string, value: unknown, plan: Plan = DEMO_PLAN): Plan {
  const outcome = setAtPath(plan, path, value);
  if (!outcome.ok) throw new Error(`the plan has no ${path}`);
  return outcome.value;
}

const ALL = DEMO_PLAN.scenarios.map((_, place) => place);

describe('keys of the figures', () => {
  it('change with an edited row alone, and with today for all', () => {
    expect(changedRows(DEMO_PLAN, changed('scenarios.3.purchaseMonth', 9))).toEqual([3]);
    expect(changedRows(DEMO_PLAN, changed('scenarios.0.pattern', 'two-shifts'))).toEqual(ALL);
  });

  it('change with a product for the two rows that make it', () => {
    const before = withMangoes();
    const dearer = withMangoes({ price: { value: 99, unit: 'USD/kg', origin: 'guess' } });
    expect(changedRows(before, dearer)).toEqual([1, 3]);
    expect(changedRows(before, dearer, 'nameless')).toEqual([1, 3]);
  });

  it('change with a machine for the rows that use it, and for those bought after them', () => {
    const pump = DEMO_PLAN.pumps.findIndex(({ id }) => id === 'good');
    expect(changedRows(DEMO_PLAN, changed(`pumps.${pump}.price.value`, 9999))).toEqual([1, 2, 3, 4, 5]);
    const chain = changed('scenarios.3.after', 'three-shared');
    expect(changedRows(chain, changed('scenarios.1.hose', 'thin', chain))).toEqual([1, 3]);
  });

  it('do not change when something is renamed, but for figures that name a machine or a loan', () => {
    for (const path of ['name', 'site.shopName', 'products.0.name', 'scenarios.3.name', 'crew.patterns.0.name'])
      expect(changedRows(DEMO_PLAN, changed(path, 'Other')), path).toEqual([]);
    const hose = DEMO_PLAN.hoses.findIndex(({ id }) => id === 'thin');
    const renamed = changed(`hoses.${hose}.name`, 'Other');
    expect(changedRows(DEMO_PLAN, renamed)).toEqual(ALL);
    expect(changedRows(DEMO_PLAN, renamed, 'nameless')).toEqual([]);
  });

  it('do not change with origins, bounds, notes, units shown and the batch log', () => {
    const plans = [
      changed('pumps.0.speed.origin', 'guess'),
      changed('chambers.0.leak.low', 0.01),
      changed('chambers.0.leak.note', 'ask'),
      changed('scenarios.0.notes', { pump: 'ask' }),
      changed('site.unitSystem', 'si'),
      changed('batchLog', []),
    ];
    for (const plan of plans) expect(changedRows(DEMO_PLAN, plan)).toEqual([]);
  });

  it('tell today from its copy, which has a return', () => {
    const [today] = DEMO_PLAN.scenarios;
    if (!today) throw new Error('the demo has no scenario');
    const copy = { ...today, id: 'copy' };
    const plan = { ...DEMO_PLAN, scenarios: [...DEMO_PLAN.scenarios, copy] };
    expect(KEYS.of(plan, copy).figures).not.toBe(KEYS.of(plan, today).figures);
  });
});

/** Paths of all single values in a part of a plan. */
function leaves(part: unknown, path: readonly string[] = []): string[] {
  if (typeof part !== 'object' || part === null) return [path.join('.')];
  return Object.entries(part).flatMap(([key, inner]) => leaves(inner, [...path, key]));
}

/** What figures do not hang on, wherever it stands. */
const IDLE = /(^|\.)(name|note|notes|origin|source|low|high|shopName|place|unitSystem)($|\.)|^(batchLog|scenarios)\./;

describe('nothing else', () => {
  /** Today alone, with one product and one of each machine: quick to run. */
  function smallPlan(): Plan {
    const [today] = DEMO_PLAN.scenarios;
    if (!today) throw new Error('the demo has no scenario');
    const mix = today.mix.slice(-1);
    const scenario = { ...today, mix, chambers: [{ chamber: 'mid', count: 1 }] };
    return { ...DEMO_PLAN, scenarios: [scenario], batchLog: [] };
  }

  /** The same as far as figures go: every word, origin and bound another, and the unused entries of the catalogues changed. */
  function reworded(plan: Plan): Plan {
    const isUsed = (list: string) => JSON.stringify(plan.scenarios).includes(`"${list}"`);
    return JSON.parse(JSON.stringify(plan), (key, value) => {
      if (key === 'note' || key === 'source') return 'other';
      if (key === 'low' || key === 'high') return undefined;
      if (key === 'origin') return 'guess';
      if (key === 'products' || key === 'patterns') return value.map((entry: object) => ({ ...entry, name: 'Other' }));
      if (key === 'pumps') return value.filter((pump: { readonly id: string }) => isUsed(pump.id));
      return value;
    });
  }

  it('moves the figures', () => {
    const plan = smallPlan();
    const other = reworded(plan);
    expect(changedRows(plan, other)).toEqual([]);
    expect(evaluateScenario(other, 'today')).toEqual(evaluateScenario(plan, 'today'));
  });

  it('is left out: each value of what a scenario uses is part of its key', () => {
    const plan = smallPlan();
    const used = JSON.stringify(plan.scenarios);
    const idleEntries = (['products', 'chambers', 'pumps', 'hoses'] as const).flatMap((list) =>
      plan[list].flatMap(({ id }, place) => (used.includes(`"${id}"`) ? [] : [`${list}.${place}.`])),
    );
    const idlePatterns = plan.crew.patterns.flatMap(({ id }, place) =>
      used.includes(`"${id}"`) ? [] : [`crew.patterns.${place}.`],
    );
    const idle = [...idleEntries, ...idlePatterns, 'format', 'version'];
    const counting = leaves(plan).filter((path) => !IDLE.test(path) && !idle.some((start) => path.startsWith(start)));
    const forgotten = counting.filter((path) => changedRows(plan, changed(path, 'another', plan)).length === 0);
    expect(counting.length).toBeGreaterThan(150);
    expect(forgotten).toEqual([]);
  });
});
