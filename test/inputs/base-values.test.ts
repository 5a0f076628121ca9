import { describe, expect, it } from 'vitest';
import { baseValues } from '../../lib/inputs/base-values.ts';
import { defaultValues } from '../../lib/inputs/default-values.ts';

describe('baseValues', () => {
  it('turns quantities and bare numbers into the units of the engine', () => {
    const pump = baseValues('pump', { ...defaultValues('pump'), speed: { value: 18, unit: 'm³/h', origin: 'quoted' } });
    expect(pump.speed).toBeCloseTo(0.005, 15);
    expect(baseValues('shift', { start: 7, end: 15.5, people: 2 })).toEqual({ start: 25200, end: 55800, people: 2 });
  });

  it('keeps flags, choices and what is left empty', () => {
    const product = baseValues('product', defaultValues('product'));
    expect([product.form, product.preFrozen, product.weeklyDemand]).toEqual(['pieces', true, null]);
  });

  it('leaves out what is no row of the section', () => {
    const hose = { ...defaultValues('hose'), id: 'h', name: 'Hose' };
    expect(Object.keys(baseValues('hose', hose))).toEqual(['diameter', 'length', 'price']);
  });
});
