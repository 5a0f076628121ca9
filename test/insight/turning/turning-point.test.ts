import { describe, expect, it } from 'vitest';
import { type Dial, dialsFor } from '../../../lib/insight/turning/dials.ts';
import { turnable, turnedPlan } from '../../../lib/insight/turning/turned-plan.ts';
import { turningPoint } from '../../../lib/insight/turning/turning-point.ts';
import { evaluateScenario, todayWeek } from '../../../lib/model/evaluate-scenario.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import type { Plan } from '../../../lib/plan/plan-types.ts';
import { plantMemory } from '../../../lib/risk/plant-memory.ts';
import { smallPlan } from '../../model/edited-plan.ts';
import { fakeSimulation, fakeWeek } from '../../model/fake-plant.ts';

const simulate = fakeSimulation(5);

const PLAN = smallPlan((document) => {
  document.financing.horizon.value = 60;
  document.crew.guaranteed = false;
});

function dial(plan: Plan, id: string): Dial {
  const found = dialsFor(plan, plan.scenarios[1]?.id ?? '').find((one) => one.id === id);
  if (!found) throw new Error(`no dial ${id}`);
  return found;
}

/** Present value and cover less the line, with a dial turned by a factor. */
function figures(plan: Plan, { paths }: Dial, factor: number) {
  const turned = turnedPlan(plan, paths, factor);
  const outcome = evaluateScenario(turned, 'two', todayWeek(turned, simulate), simulate);
  if (outcome.kind !== 'computed') throw new Error('refused');
  const { finance } = outcome.result;
  return { worth: finance.versusToday?.netPresentValue ?? 0, cover: (finance.lowestCover ?? 0) - finance.line };
}

describe('the dials of a scenario', () => {
  it('turn what is in it and leave out what is not', () => {
    const ids = dialsFor(DEMO_PLAN, 'three-shared').map((one) => one.id);
    expect(ids).toContain('price');
    expect(ids).toContain('price bean-soup');
    expect(ids).toContain('interest');
    expect(new Set(ids).size).toBe(ids.length);
    const chambers = dialsFor(DEMO_PLAN, 'three-shared').find((one) => one.id === 'chamberPrice');
    expect(chambers?.paths).toEqual(['chambers.0.price']);
  });

  it('turn no loan that runs already, and nothing that is 0', () => {
    expect(dial(DEMO_PLAN, 'interest').paths).toEqual(['financing.loans.0.rate']);
    const free = smallPlan((document) => {
      document.products[0].packaging.value = 0;
    });
    expect(dialsFor(free, 'two').map((one) => one.id)).not.toContain('packaging');
  });

  it('keep every quantity within its range of the register, in whatever unit', () => {
    const plan = smallPlan((document) => {
      document.site.availability = { value: 90, unit: '%', origin: 'guess' };
    });
    const found = dial(plan, 'availability');
    expect(found.range).toEqual([0.1, 1 / 0.9]);
    expect(turnable(turnedPlan(plan, found.paths, 3), found.paths[0] ?? '')?.quantity.value).toBeCloseTo(100, 9);
  });
});

describe('what must be true', () => {
  it.each(['price', 'wetCost', 'wage', 'chamberPrice'])('finds the %s at which the purchase is worth nothing', (id) => {
    const { worth, dial: turned } = turningPoint(PLAN, 'two', dial(PLAN, id), simulate);
    if (worth.kind !== 'turns') throw new Error(`${id}: ${worth.kind}`);
    // Cents over sixty months: the present value is known to a few of them.
    expect(Math.abs(figures(PLAN, turned, worth.factor).worth)).toBeLessThan(1);
    expect(worth.again).toEqual([]);
  });

  it.each(['price', 'wage', 'interest'])('finds the %s at which the lender is just content', (id) => {
    const { cover, dial: turned } = turningPoint(PLAN, 'two', dial(PLAN, id), simulate);
    if (cover.kind === 'never') return expect(figures(PLAN, turned, turned.range[1]).cover).toBeGreaterThan(0);
    if (cover.kind !== 'turns') throw new Error(`${id}: ${cover.kind}`);
    expect(Math.abs(figures(PLAN, turned, cover.factor).cover)).toBeLessThan(1e-4);
  });

  it('says that interest never makes a purchase worthless before loans', () => {
    expect(turningPoint(PLAN, 'two', dial(PLAN, 'interest'), simulate).worth).toEqual({ kind: 'never' });
  });

  it('says what a purchase that is not worth it would need', () => {
    const poor = smallPlan((document) => {
      document.products[0].price = { value: 45, unit: 'money/kg', origin: 'guess' };
    });
    const { worth, dial: turned } = turningPoint(poor, 'two', dial(poor, 'price'), simulate);
    expect(worth.kind).toBe('alreadyBelow');
    expect('factor' in worth && worth.factor).toBeGreaterThan(1);
    expect(Math.abs(figures(poor, turned, ('factor' in worth && worth.factor) || 1).worth)).toBeLessThan(1);
  });

  it('knows no cover without debt', () => {
    const own = smallPlan((document) => {
      document.financing.loans = [];
    });
    expect(turningPoint(own, 'two', dial(own, 'price'), simulate).cover).toEqual({ kind: 'none' });
  });

  it('tells where the shop stops running', () => {
    const memory = plantMemory((spec) => {
      const load = spec.mix[0]?.product.load ?? 0;
      return load > 9 ? { ok: false, error: { kind: 'nothingToMake' } } : { ok: true, value: fakeWeek(spec, 5) };
    });
    const { stopsAbove, stopsBelow } = turningPoint(PLAN, 'two', dial(PLAN, 'load'), memory.simulate);
    // 7 kg/m² today, tried at 1.15, 1.3, 1.45 and 1.6 times as much.
    expect(stopsAbove).toBeCloseTo(1.3, 9);
    expect(stopsBelow).toBeNull();
  });

  it('runs no week anew for money alone', () => {
    const memory = plantMemory(simulate);
    for (const id of ['price', 'wage', 'interest', 'chamberPrice', 'rent'])
      turningPoint(PLAN, 'two', dial(PLAN, id), memory.simulate);
    expect(memory.runs()).toBe(2);
  });
});
