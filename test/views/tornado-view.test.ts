import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Tornado, TornadoBar } from '../../lib/risk/tornado.ts';
import { uncertainInputs } from '../../lib/risk/uncertain-inputs.ts';
import { tornadoView } from '../../lib/views/tornado-view.ts';
import { findPath } from '../../lib/views/uncertain-path.ts';

const US = { system: 'us', currency: 'USD' } as const;
const INPUTS = uncertainInputs(DEMO_PLAN);

function bar(place: number, atLow: number | null, atHigh: number | null): TornadoBar {
  const input = INPUTS[place];
  if (!input) throw new Error(`no input ${place}`);
  const ends = [1000, atLow ?? 1000, atHigh ?? 1000];
  return { input, atLow, atHigh, swing: Math.max(...ends) - Math.min(...ends) };
}

const TORNADO: Tornado = { likely: 1000, bars: [bar(0, -200, 1900), bar(1, 1300, 800), bar(2, 1000, 1000)] };

describe('tornadoView', () => {
  it('heads the figure with the input that moves it most', () => {
    const view = tornadoView(DEMO_PLAN, TORNADO, 'netPresentValue', US);
    expect(view?.finding).toMatch(/^The net present value hangs most on .+: −\$200 at its low, \$1,900 at its high$/);
  });

  it('leaves out what moves nothing, keeps the order, and reaches over all ends', () => {
    const view = tornadoView(DEMO_PLAN, TORNADO, 'netPresentValue', US);
    expect(view?.rows.map((row) => [row.low, row.high])).toEqual([
      [-200, 1900],
      [1300, 800],
    ]);
    expect(view?.ticks[0]).toBeLessThanOrEqual(-200);
    expect(view?.ticks.at(-1)).toBeGreaterThanOrEqual(1900);
  });

  it('gives every input its name and whose it is', () => {
    const view = tornadoView(DEMO_PLAN, TORNADO, 'netPresentValue', US);
    for (const row of view?.rows ?? []) expect(row.label).not.toContain('.');
  });

  it('lists all bars for saving, in the units they were entered in', () => {
    const { series } = tornadoView(DEMO_PLAN, TORNADO, 'netPresentValue', US) ?? {};
    expect(series?.rows).toHaveLength(3);
    expect(series?.rows[0]?.slice(1, 5)).toEqual([INPUTS[0]?.unit, ...Object.values(INPUTS[0]?.points ?? {})]);
  });

  it('is null where the scenario has no such figure', () => {
    expect(tornadoView(DEMO_PLAN, { ...TORNADO, likely: null }, 'netPresentValue', US)).toBeNull();
  });
});

describe('findPath', () => {
  it('leads every uncertain input back to its place', () => {
    expect(INPUTS.length).toBeGreaterThan(5);
    for (const { key, path } of INPUTS) expect(findPath(DEMO_PLAN, key)).toBe(path);
  });

  it('follows a thing that has moved, and is null for one that is gone', () => {
    const turned = { ...DEMO_PLAN, products: [...DEMO_PLAN.products].reverse() };
    const last = DEMO_PLAN.products.length - 1;
    expect(findPath(turned, `products.${DEMO_PLAN.products[0]?.id}.price`)).toBe(`products.${last}.price`);
    expect(findPath(DEMO_PLAN, 'products.gone.price')).toBeNull();
  });
});
