import fc from 'fast-check';
import type { ChamberSpec, ChamberUnitSpec, MixShare, ProductSpec, PumpSpec, ShopSpec } from '../../lib/plant/types.ts';
import { CANDY, CHAMBER, DAY_CREW, FRUIT, FULL_CREW, GOOD_PUMP, QUICK_CREW, SMALL_PUMP, SOUP } from './sample-shop.ts';

function between(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}

/** Any chamber a small shop may have; the trap always takes a load of any product below. */
export const anyChamber: fc.Arbitrary<ChamberSpec> = fc
  .record({
    leak: between(0.001, 0.05),
    outgassing: between(0, 60),
    volume: between(0.1, 0.6),
    heaterPower: between(600, 4000),
    pressureCeiling: between(60, 200),
    vapourConductance: between(1e-5, 1e-4),
    rated: between(236, 246),
  })
  .map(({ vapourConductance, rated, ...change }) => ({
    ...CHAMBER,
    ...change,
    trap: {
      ...CHAMBER.trap,
      capacity: 40,
      vapourConductance,
      curve: [
        { load: 0, temperature: 223.15 },
        { load: 1600, temperature: rated },
      ],
    },
  }));

export const anyUnit: fc.Arbitrary<ChamberUnitSpec> = fc.record({
  chamber: anyChamber,
  hose: fc.record({ diameter: between(0.025, 0.06), length: between(0.5, 6) }),
});

export const anyPump: fc.Arbitrary<PumpSpec> = fc
  .record({ speed: between(5, 40), ultimate: between(0.1, 3), law: fc.boolean() })
  .map(({ speed, ultimate, law }) => ({
    ...(law ? GOOD_PUMP : SMALL_PUMP),
    speed: speed / 3600,
    ultimate,
  }));

export const anyProduct: fc.Arbitrary<ProductSpec> = fc
  .record({
    base: fc.constantFrom(FRUIT, SOUP, CANDY),
    load: between(4, 9),
    permeability: between(8e-9, 5e-8),
    driedConductivity: between(0.035, 0.06),
    shelfPrimary: between(305, 335),
    target: between(0.025, 0.05),
  })
  .map(({ base, target, ...change }) => ({ ...base, ...change, desorption: { ...base.desorption, target } }));

const anyMix: fc.Arbitrary<readonly MixShare[]> = fc
  .record({ first: anyProduct, second: anyProduct, share: between(0.2, 1), cap: fc.option(between(5, 60)) })
  .map(({ first, second, share, cap }) => [
    { product: { ...first, id: 'first' }, share, weeklyCap: cap },
    { product: { ...second, id: 'second' }, share: 1 - share, weeklyCap: null },
  ]);

/** One to three chambers on one pump or two, any practice and pattern, a week measured after one of warm-up. */
export const anyShop: fc.Arbitrary<ShopSpec> = fc
  .record({
    units: fc.array(anyUnit, { minLength: 1, maxLength: 3 }),
    pumps: fc.tuple(anyPump, anyPump),
    split: fc.boolean(),
    startPractice: fc.constantFrom('isolate', 'allOpen', 'roughing'),
    startPattern: fc.constantFrom('together', 'staggered', 'asReady'),
    mix: anyMix,
    crew: fc.constantFrom(DAY_CREW, FULL_CREW, QUICK_CREW),
    freezer: fc.option(fc.constant({ temperature: 243.15, coefficient: 25, capacity: 40, power: 400 })),
  })
  .map(({ units, pumps, split, ...rest }) => {
    const half = split ? Math.ceil(units.length / 2) : units.length;
    const groups = [units.slice(0, half), units.slice(half)].flatMap((chambers, i) =>
      chambers.length > 0 ? [{ pump: pumps[i] as PumpSpec, chambers }] : [],
    );
    return { ...rest, groups, roughingPump: SMALL_PUMP, warmUpWeeks: 1, measuredWeeks: 1 };
  });
