import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sublimationHeat } from '../../lib/physics/ice-latent-heat.ts';
import { icePressure } from '../../lib/physics/ice-pressure.ts';
import { chamberLoad } from '../../lib/plant/chamber-load.ts';
import { type DryingInstant, dryingInstant, dryingRate } from '../../lib/plant/drying-rate.ts';
import { type TrapVapour, trapLaw, trapVapour } from '../../lib/plant/trap-law.ts';
import type { ChamberSpec, ProductSpec } from '../../lib/plant/types.ts';
import { anyChamber, anyProduct } from './any-shop.ts';
import { CHAMBER, FRUIT, SOUP } from './sample-shop.ts';

interface Moment {
  readonly chamber?: Partial<ChamberSpec>;
  readonly product?: ProductSpec;
  readonly dried?: number;
  readonly ice?: number;
  readonly gas?: number;
  /** Flow of an earlier search, where this one begins [kg/s]. */
  readonly guess?: number;
}

function rate({ chamber, product = FRUIT, dried = 0.3, ice = 2, gas = 5, guess = 0 }: Moment = {}): DryingInstant {
  const spec = { ...CHAMBER, ...chamber };
  const out = { ...dryingInstant(), flow: guess };
  dryingRate(spec, trapLaw(spec.trap, spec.gasTemperature), chamberLoad(product, spec), dried, ice, gas, out);
  return out;
}

/** Plenty of everything, so that one limit can be set against it. */
const FREE: Partial<ChamberSpec> = { heaterPower: 1e5, pressureCeiling: 300 };
const TOUGH: ProductSpec = { ...FRUIT, frozenLimit: 272, scorchLimit: 400, shelfPrimary: 338 };

describe('what holds sublimation back', () => {
  it.each([
    ['shelfTemperature', { chamber: FREE, product: { ...TOUGH, shelfPrimary: 300 } }],
    ['heaterPower', { chamber: { ...FREE, heaterPower: 300 }, product: TOUGH }],
    ['frozenLimit', { chamber: FREE, product: { ...TOUGH, form: 'poured', frozenLimit: 250 }, dried: 0.05 }],
    ['scorchLimit', { chamber: FREE, product: { ...TOUGH, scorchLimit: 285 } }],
    ['ceilingByTrap', { chamber: { ...FREE, pressureCeiling: 40 }, product: TOUGH, dried: 0.05 }],
    ['ceilingByGas', { chamber: { ...FREE, pressureCeiling: 40 }, product: TOUGH, dried: 0.05, gas: 30 }],
  ] as const)('%s is named', (limit, moment) => {
    expect(rate(moment).limit).toBe(limit);
  });

  it('gives exactly the temperature, power or pressure of the limit', () => {
    expect(rate({ chamber: FREE, product: { ...TOUGH, shelfPrimary: 300 } }).shelfTemperature).toBeCloseTo(300, 4);
    // The cap is taken at the largest latent heat there is, so the power is at most 0.1 % short; the fits are good to 1e-5.
    const heated = rate({ chamber: { ...FREE, heaterPower: 300 }, product: TOUGH }).heat;
    expect(heated).toBeLessThan(300 * (1 + 1e-5));
    expect(heated).toBeGreaterThan(299.6);
    const ceiling = rate({ chamber: { ...FREE, pressureCeiling: 40 }, product: TOUGH, dried: 0.05 });
    expect(ceiling.vapourPressure + 5).toBeCloseTo(40, 4);
    const collapse = rate({ chamber: FREE, product: { ...TOUGH, frozenLimit: 245 }, dried: 0.05 });
    expect(collapse.limit).toBe('frozenLimit');
    expect(collapse.iceTemperature).toBeCloseTo(245, 4);
  });

  it('keeps the chamber pressure from following the gas at the ceiling only', () => {
    expect(rate({ chamber: { ...FREE, pressureCeiling: 40 }, product: TOUGH, dried: 0.05 }).followsGas).toBe(0);
    expect(rate({ chamber: { ...FREE, heaterPower: 300 }, product: TOUGH }).followsGas).toBe(1);
    const free = rate().followsGas;
    expect(free).toBeGreaterThan(0);
    expect(free).toBeLessThan(1.2);
  });

  it('stops altogether when gas alone fills the chamber to its ceiling', () => {
    const drowned = rate({ gas: 90 });
    expect(drowned.flow).toBe(0);
    expect(drowned.heat).toBe(0);
    expect(drowned.limit).toBe('ceilingByGas');
  });
});

describe('the laws behind the rate', () => {
  it.each([FRUIT, SOUP])('heat and vapour balance at the front of $id', (product) => {
    const moment = { product, dried: 0.4 };
    const found = rate(moment);
    const load = chamberLoad(product, CHAMBER);
    const thickness = 0.4 * load.depth;
    const flux = found.flow * load.fluxPerFlow;
    const pressure = found.vapourPressure + 5;
    const resistance = product.surfaceResistance + thickness / product.permeability;
    expect(flux * resistance).toBeCloseTo(icePressure(found.iceTemperature) - pressure, 4);
    const { contact, pressureSlope, pressureDamping, radiation } = CHAMBER.heat;
    const film = contact + (pressureSlope * pressure) / (1 + pressureDamping * pressure) + radiation;
    const inside =
      product.form === 'poured'
        ? (load.depth - thickness) / load.frozenConductivity
        : thickness / (product.driedConductivity + product.driedConductivitySlope * pressure);
    const carried = (found.shelfTemperature - found.iceTemperature) / (1 / film + inside);
    expect(flux * sublimationHeat(found.iceTemperature)).toBeCloseTo(carried, 2);
    expect(found.heat).toBeCloseTo(found.flow * sublimationHeat(found.iceTemperature), 3);
  });

  it('the vapour pressure is the one the trap keeps at that flow', () => {
    const found = rate({ ice: 6 });
    const vapour: TrapVapour = { pressure: 0, slope: 0, load: 0 };
    trapVapour(trapLaw(CHAMBER.trap, CHAMBER.gasTemperature), found.flow, 6, vapour);
    expect(found.vapourPressure).toBeCloseTo(vapour.pressure, 6);
  });

  it('finds the same wherever it starts to look', () => {
    const plain = rate();
    for (const guess of [1e-7, 1e-5, 1e-4, 5e-4, 1]) {
      expect(Math.abs(rate({ guess }).flow / plain.flow - 1)).toBeLessThan(1e-5);
    }
  });

  it('falls as the layer dries, as ice and gas gather, and with more for the slowest tray to do', () => {
    expect(rate({ dried: 0.8 }).flow).toBeLessThan(rate({ dried: 0.2 }).flow);
    expect(rate({ ice: 12 }).flow).toBeLessThan(rate({ ice: 0 }).flow);
    expect(rate({ product: { ...SOUP, spread: 1.5 } }).flow).toBeLessThan(rate({ product: SOUP }).flow);
    const dense = { ...CHAMBER.heat, pressureSlope: 0 };
    const product = { ...FRUIT, driedConductivitySlope: 0 };
    expect(rate({ chamber: { heat: dense }, product, gas: 40 }).flow).toBeLessThan(
      rate({ chamber: { heat: dense }, product, gas: 0 }).flow,
    );
  });

  it('breaks no limit, ever', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(anyChamber, anyProduct, share, share, share, (chamber, product, dried, ice, gas) => {
        fc.pre(product.form !== 'bound');
        const found = rate({ chamber, product, dried, ice: 14 * ice, gas: 250 * gas });
        expect(found.flow).toBeGreaterThanOrEqual(0);
        expect(found.followsGas).toBeGreaterThanOrEqual(0);
        if (found.flow === 0) return;
        expect(found.shelfTemperature).toBeLessThan(Math.min(product.shelfPrimary, chamber.shelfLimit) + 1e-3);
        expect(found.iceTemperature).toBeLessThan(product.frozenLimit + 1e-3);
        expect(found.vapourPressure + 250 * gas).toBeLessThan(chamber.pressureCeiling * (1 + 1e-6));
        expect(found.heat).toBeLessThan(chamber.heaterPower * (1 + 1e-5));
      }),
      { numRuns: 300 },
    );
  });
});
