import { describe, expect, it } from 'vitest';
import { axisMoney, quantityText, quantityWithUnit, unitText, withUnit } from '../../lib/views/format-quantity.ts';

const US = { system: 'us', currency: 'USD' } as const;
const SI = { system: 'si', currency: 'EUR' } as const;
const FRANC = { system: 'si', currency: 'CHF' } as const;

describe('unitText', () => {
  it('puts the currency where money stands', () => {
    expect(unitText('moneyPerMass', US)).toBe('$/lb');
    expect(unitText('moneyPerMass', SI)).toBe('€/kg');
    expect(unitText('moneyPerEnergy', FRANC)).toBe('CHF/kWh');
  });

  it('leaves bare numbers without a unit', () => {
    expect(unitText('count', US)).toBe('');
    expect(unitText('moisture', US)).toBe('kg/kg');
  });
});

describe('quantityText', () => {
  it.each([
    ['mass', 100, US, '220'],
    ['mass', 100, SI, '100'],
    ['time', 3600 * 20.25, US, '20.3'],
    ['pressure', 86.66, US, '650'],
    ['fraction', 0.034, US, '3.4'],
    ['money', 1234.56, US, '1,235'],
    ['money', 12.5, US, '12.50'],
    ['money', 12, US, '12'],
    ['months', 18.24, US, '18.2'],
    ['count', 6, US, '6'],
    ['count', 1.256, US, '1.3'],
  ] as const)('%s %d', (dimension, value, shown, text) => {
    expect(quantityText(value, dimension, shown)).toBe(text);
  });

  it('is a dash for none', () => {
    expect(quantityText(null, 'months', US)).toBe('—');
    expect(quantityWithUnit(null, 'money', US)).toBe('—');
  });
});

describe('quantityWithUnit', () => {
  it.each([
    ['money', 1240, US, '$1,240'],
    ['money', -1240, US, '−$1,240'],
    ['money', 1240, FRANC, 'CHF1,240'],
    ['moneyPerMass', 2.5, SI, '€2.50/kg'],
    ['fraction', 0.61, US, '61 %'],
    ['months', 12, US, '12.0 months'],
    ['temperature', 253.15, US, '−4.00 °F'],
    ['count', 3, US, '3'],
  ] as const)('%s %d', (dimension, value, shown, text) => {
    expect(quantityWithUnit(value, dimension, shown)).toBe(text);
  });

  it('adds nothing where there is no unit', () => {
    expect(withUnit('12', '')).toBe('12');
    expect(withUnit('216,000', '1/h')).toBe('216,000/h');
  });
});

describe('axisMoney', () => {
  it('is short', () => {
    expect([0, 400, 12_000, -4000, 120_000, 1_500_000].map((value) => axisMoney(value, US))).toEqual([
      '$0',
      '$400',
      '$12k',
      '−$4k',
      '$120k',
      '$1.50M',
    ]);
  });
});
