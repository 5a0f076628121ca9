import { describe, expect, it } from 'vitest';
import { purchaseItems, stageCapital } from '../../lib/model/scenario-capital.ts';
import { todayOf } from '../../lib/model/scenario-equipment.ts';
import { scenarioStages } from '../../lib/model/scenario-stages.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Scenario } from '../../lib/plan/plan-types.ts';

const money = (value: number) => ({ value, unit: 'money', origin: 'quoted' }) as const;

function scenario(id: string, change: Partial<Scenario> = {}): Scenario {
  const found = DEMO_PLAN.scenarios.find((candidate) => candidate.id === id);
  if (!found) throw new Error(`the demo has no ${id}`);
  return { ...found, ...change };
}

/** The stage from today to a scenario. */
function fromToday(chosen: Scenario) {
  return { before: todayOf(DEMO_PLAN), scenario: chosen };
}

function linesOf(chosen: Scenario): (readonly [string, number])[] {
  return stageCapital(DEMO_PLAN, fromToday(chosen)).lines.map((line) => [
    line.name,
    Math.round(100 * line.amount) / 100,
  ]);
}

describe('stageCapital', () => {
  it('lists what three chambers on one good pump need beyond two with small pumps', () => {
    expect(linesOf(scenario('three-shared'))).toEqual([
      ['Mid-size chamber', 21500 + 900],
      ['Good pump with gas ballast', 3400],
      ['Wide hose to the manifold', 3 * 160],
      ['Manifold', 3 * 280],
      ['Electrical work', 850],
      ['Delivery', 950],
      ['Contingency', 0.1 * (22400 + 3400 + 480 + 840 + 850 + 950)],
    ]);
  });

  it('buys one pump for each group', () => {
    const [shared, groups] = [scenario('six-shared'), scenario('six-groups')].map((chosen) => new Map(linesOf(chosen)));
    expect(groups?.get('Good pump with gas ballast')).toBe(2 * (shared?.get('Good pump with gas ballast') ?? 0));
    expect(groups?.get('Manifold')).toBe(shared?.get('Manifold'));
  });

  it('is nothing for today, whatever stands in its entries', () => {
    expect(scenarioStages(DEMO_PLAN, scenario('today', { extraCapital: money(5000) }))).toEqual([]);
  });

  it('needs neither delivery nor contingency where nothing is bought', () => {
    expect(linesOf(scenario('today', { id: 'longer-days' }))).toEqual([]);
  });

  it('counts other capital as one more thing, and a negative one as old equipment given in', () => {
    const more = new Map(linesOf(scenario('three-shared', { extraCapital: money(2000) })));
    expect(more.get('Other')).toBe(2000);
    const less = stageCapital(DEMO_PLAN, fromToday(scenario('three-shared', { extraCapital: money(-2000) })));
    expect(less.lines.at(-1)).toEqual({ name: 'Old equipment given in', group: 'tradeIn', amount: -2000 });
    // A trade-in lowers what has to be found, and is no reason to lay less by.
    expect(less.total).toBe(stageCapital(DEMO_PLAN, fromToday(scenario('three-shared'))).total - 2000);
  });

  it('buys the pump a scenario with other pumps needs even when it has fewer of them', () => {
    const fewer = scenario('three-shared', { chambers: [{ chamber: 'mid', count: 2 }] });
    expect(linesOf(fewer).map(([name]) => name)).toEqual([
      'Good pump with gas ballast',
      'Wide hose to the manifold',
      'Manifold',
      'Delivery',
      'Contingency',
    ]);
  });

  it('sells a thing at the end of its life for a share of its price', () => {
    const [chamber, pump] = purchaseItems(DEMO_PLAN, fromToday(scenario('three-shared')));
    expect(chamber).toMatchObject({ usefulLife: 120, salvage: 0.15 * 21500 });
    expect(pump).toMatchObject({ usefulLife: 96, salvage: 0.1 * 3400 });
  });

  it('buys a spare pump for the shelf and another freezer at their price', () => {
    const spare = new Map(linesOf(scenario('three-shared', { sparePump: 'onShelf', freezers: 3 })));
    expect(spare.get('Good pump with gas ballast')).toBe(2 * 3400);
    expect(spare.get('Freezer')).toBe(2 * 2800);
  });

  it('buys at each stage only what the stage before has not got', () => {
    const three = scenario('three-shared');
    const six = { before: three, scenario: scenario('six-shared', { after: 'three-shared', purchaseMonth: 14 }) };
    const lines = new Map(stageCapital(DEMO_PLAN, six).lines.map((line) => [line.name, line.amount]));
    expect(lines.get('Mid-size chamber')).toBe(3 * 22400);
    expect(lines.has('Good pump with gas ballast')).toBe(false);
    expect(lines.get('Manifold')).toBe(3 * 280);
  });
});
