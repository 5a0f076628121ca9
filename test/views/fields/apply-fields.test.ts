import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import type { Plan } from '../../../lib/plan/plan-types.ts';
import { applyFields, emptyFields } from '../../../lib/views/fields/apply-fields.ts';
import { performFields, presentState, startSheet, undoGesture } from '../../../lib/views/sheet-history.ts';
import { cellIn, entryFor, stateOf } from './demo-blocks.ts';

const STATE = stateOf(DEMO_PLAN);

function enter(...texts: [place: string, text: string][]) {
  return applyFields(
    STATE,
    texts.map(([place, text]) => entryFor(STATE, place, text)),
  );
}

function pump(plan: Plan, id: string) {
  return plan.pumps.find((candidate) => candidate.id === id);
}

describe('texts for fields', () => {
  it('take units, and say how they were understood', () => {
    const done = enter(['pumps.@small.speed', '7 m3/h']);
    expect(pump(done.state.plan, 'small')?.speed).toMatchObject({ value: 7, unit: 'm³/h', origin: 'quoted' });
    expect(done.said).toBe('Small pump, rated speed: 4.12 cfm (understood from "7 m3/h": 7 m³/h = 4.1200445 cfm).');
  });

  it('take sums in the unit shown', () => {
    const done = enter(['chambers.@mid.price', '3*4500+200']);
    expect(done.state.plan.chambers[0]?.price).toMatchObject({ value: 13700, origin: 'quoted' });
  });

  it('turn what was published into a guess once it is typed over', () => {
    const done = enter(['products.@sweetcorn.water', '80']);
    expect(done.state.plan.products[1]?.water).toEqual({
      value: 80,
      unit: '%',
      origin: 'guess',
      note: 'Food 11167, corn, sweet, yellow, raw',
    });
  });

  it('keep low and high only where they still hold the value between them', () => {
    const { price } = enter(['chambers.@mid.price', '24000']).state.plan.chambers[0] as Plan['chambers'][number];
    expect([price.low, price.value, price.high]).toEqual([20000, 24000, 24500]);
    const dear = enter(['chambers.@mid.price', '30000']).state.plan.chambers[0]?.price;
    expect([dear?.low, dear?.high]).toEqual([20000, undefined]);
  });

  it('that are left as they are shown change nothing', () => {
    const shown = cellIn(STATE, 'pumps.@small.speed').plainText;
    expect(enter(['pumps.@small.speed', shown]).state.plan).toBe(DEMO_PLAN);
  });

  it('that cannot be read wait in their cell', () => {
    const done = enter(['pumps.@small.speed', 'lots'], ['pumps.@small.power', '400']);
    expect([done.taken, done.refused]).toEqual([1, 1]);
    expect(cellIn(done.state, 'pumps.@small.speed')).toMatchObject({
      text: 'lots',
      fault: { problem: '"lots" cannot be read.' },
    });
    expect(pump(done.state.plan, 'small')?.power.value).toBe(400);
    expect(pump(done.state.plan, 'small')?.speed).toBe(pump(DEMO_PLAN, 'small')?.speed);
  });

  it('that break a rule of the plan wait too', () => {
    const done = enter(['products.@strawberries.protein', '60']);
    expect(done.state.plan).toBe(DEMO_PLAN);
    expect(done.said).toContain('sum to');
  });

  it('are taken together when they are only possible together', () => {
    const done = enter(['products.@strawberries.protein', '60'], ['products.@strawberries.water', '20']);
    expect(done.refused).toBe(0);
    expect(done.said).toBe('2 cells changed.');
  });

  it('name, weekdays, choices and yes or no are read in words', () => {
    const done = enter(
      ['pumps.@good.name', 'Big one'],
      ['crew.patterns.@days.shifts.0.weekdays', 'Mon-Sat'],
      ['products.@strawberries.form', 'poured'],
      ['products.@strawberries.preFrozen', 'no'],
      ['site.currency', 'eur'],
    );
    const { plan } = done.state;
    expect(done.refused).toBe(0);
    expect(pump(plan, 'good')?.name).toBe('Big one');
    expect(plan.crew.patterns[0]?.shifts[0]?.weekdays).toEqual([0, 1, 2, 3, 4, 5]);
    expect(plan.products[0]).toMatchObject({ form: 'poured', preFrozen: false });
    expect(plan.site.currency).toBe('EUR');
  });
});

describe('emptied fields', () => {
  it('go back to what is usual, or to none', () => {
    const cells = ['pumps.@small.speed', 'products.@strawberries.weeklyDemand'].map((place) => cellIn(STATE, place));
    const done = emptyFields(STATE, cells);
    expect(pump(done.state.plan, 'small')?.speed).toMatchObject({ value: 16, origin: 'guess' });
    expect(done.state.plan.products[0]?.weeklyDemand).toBeNull();
  });

  it('that wait to be mended show the plan’s value again', () => {
    const marked = enter(['pumps.@small.speed', 'lots']).state;
    const done = emptyFields(marked, [cellIn(marked, 'pumps.@small.speed')]);
    expect(done.state.misread).toEqual([]);
    expect(done.state.plan).toBe(DEMO_PLAN);
    expect(done.said).toBe('1 cell as before.');
  });

  it('that need something are kept', () => {
    const done = emptyFields(STATE, [cellIn(STATE, 'pumps.@small.name')]);
    expect(done.state.plan).toBe(DEMO_PLAN);
    expect(done.said).toBe('1 cell cannot be empty.');
  });
});

describe('a gesture over fields', () => {
  it('is one step of the history, marks and all', () => {
    const done = enter(['pumps.@small.speed', 'lots'], ['pumps.@small.power', '400']);
    const { sheet } = performFields(startSheet(DEMO_PLAN), done);
    expect(presentState(sheet).misread).toHaveLength(1);
    const undone = presentState(undoGesture(sheet).sheet);
    expect([undone.plan, undone.misread]).toEqual([DEMO_PLAN, []]);
  });
});
