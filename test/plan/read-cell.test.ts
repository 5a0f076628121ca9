import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { NumberField, QuantityField } from '../../lib/inputs/input-field.ts';
import { fieldOf } from '../../lib/inputs/register.ts';
import { readCell, readFieldCell } from '../../lib/plan/read-cell.ts';
import { unitSymbols } from '../../lib/units/convert.ts';
import { DIMENSIONS, type Dimension } from '../../lib/units/dimension.ts';

function read(text: string, dimension: Dimension, shown: string) {
  return readCell(text, { dimension, shown, currency: 'USD' });
}

describe('readCell understands', () => {
  it.each<[string, Dimension, string, number, string, string]>([
    ['3*4500+200', 'money', 'money', 13700, 'money', '13,700 USD'],
    ['=2*(3+4)', 'count', '', 14, '', '14'],
    ['7 cfm', 'pumpingSpeed', 'm³/h', 7, 'cfm', '7 cfm = 11.893076 m³/h'],
    ['600 mTorr', 'pressure', 'Pa', 600, 'mTorr', '600 mTorr = 79.993421 Pa'],
    ['600 microns', 'pressure', 'mTorr', 600, 'mTorr', '600 mTorr'],
    ['-10 °F', 'temperature', '°C', -10, '°F', '-10 °F = -23.333333 °C'],
    ['−10°F', 'temperature', '°F', -10, '°F', '-10 °F'],
    ['-10 F', 'temperature', '°C', -10, '°F', '-10 °F = -23.333333 °C'],
    ['2.5 h', 'time', 'h', 2.5, 'h', '2.5 h'],
    ['90 minutes', 'time', 'h', 90, 'min', '90 min = 1.5 h'],
    ['12%', 'fraction', '%', 12, '%', '12 %'],
    ['12 %', 'ratePerYear', '%/year', 12, '%/year', '12 %/year'],
    ['115%', 'fraction', '1', 115, '%', '115 % = 1.15'],
    ['(1,234.5)', 'money', 'money', -1234.5, 'money', '-1,234.5 USD'],
    ['$5', 'money', 'money', 5, 'money', '5 USD'],
    ['($1,500)', 'money', 'money', -1500, 'money', '-1,500 USD'],
    ['$ (1,500)', 'money', 'money', -1500, 'money', '-1,500 USD'],
    ['5 USD', 'money', 'money', 5, 'money', '5 USD'],
    ['usd 5/kg', 'moneyPerMass', 'money/kg', 5, 'money/kg', '5 USD/kg'],
    ['$5/lb', 'moneyPerMass', 'money/kg', 5, 'money/lb', '5 USD/lb = 11.023113 USD/kg'],
    ['1 lb + 8 oz', 'mass', 'kg', 1.5, 'lb', '1.5 lb = 0.68038856 kg'],
    ['2 + 3 ft', 'length', 'mm', 5, 'ft', '5 ft = 1,524 mm'],
    ['1/2 in', 'length', 'mm', 0.5, 'in', '0.5 in = 12.7 mm'],
    ['3 kg / 1500 g', 'mass', 'kg', 2, 'kg', '2 kg'],
    ['20 °C + 5 °C', 'temperature', 'K', 25, '°C', '25 °C = 298.15 K'],
    ['200*5%', 'money', 'money', 10, 'money', '10 USD'],
    ['2e-8', 'permeability', 's', 2e-8, 's', '2e-8 s'],
    ['.5', 'mass', 'lb', 0.5, 'lb', '0.5 lb'],
    ['12,345,678', 'money', 'money', 12345678, 'money', '12,345,678 USD'],
    ['0.01 Pa·m³/s', 'gasLoad', 'mbar·L/s', 0.01, 'Pa·m³/s', '0.01 Pa·m³/s = 0.1 mbar·L/s'],
    ['0.01 Pa m3/s', 'gasLoad', 'Pa·m³/s', 0.01, 'Pa·m³/s', '0.01 Pa·m³/s'],
    ['6 W/m2K', 'heatTransfer', 'W/(m²·K)', 6, 'W/(m²·K)', '6 W/(m²·K)'],
    ['2 kw', 'power', 'W', 2, 'kW', '2 kW = 2,000 W'],
    ['--3', 'mass', 'kg', 3, 'kg', '3 kg'],
    ['-(1+2)', 'mass', 'kg', -3, 'kg', '-3 kg'],
    ['(1+2) lb', 'mass', 'kg', 3, 'lb', '3 lb = 1.3607771 kg'],
  ])('%s as %s', (text, dimension, shown, value, unit, words) => {
    const result = read(text, dimension, shown);
    expect(result).toEqual({ ok: true, value: { value: expect.closeTo(value, 12), unit, words } });
  });

  it.each(
    (Object.keys(DIMENSIONS) as Dimension[]).flatMap((dimension) =>
      unitSymbols(dimension)
        .filter((symbol) => symbol !== '' && symbol !== '1')
        .map((symbol) => [dimension, symbol] as const),
    ),
  )('every unit of %s by its symbol: %s', (dimension, symbol) => {
    const result = read(`4 ${symbol}`, dimension, unitSymbols(dimension)[0] ?? '');
    expect(result.ok && [result.value.value, result.value.unit]).toEqual([4, symbol]);
  });
});

describe('readCell refuses', () => {
  it.each<[string, Dimension, string]>([
    ['', 'mass', 'The cell is empty.'],
    ['  = ', 'mass', 'The cell is empty.'],
    ['abc', 'mass', '"abc" cannot be read.'],
    ['2,5', 'mass', 'A comma only separates thousands here, such as 1,234.'],
    ['1,23,456', 'mass', 'A comma only separates thousands here, such as 1,234.'],
    ['5 kg', 'length', '"kg" is not a unit of this field.'],
    ['5k', 'money', '"k" is not a unit of this field.'],
    ['12%', 'money', 'A share alone is no amount here.'],
    ['12 %', 'time', 'A share alone is no amount here.'],
    ['$5 a month', 'money', '"a month" is not a unit of this field.'],
    ['a few', 'count', '"a few" cannot be read.'],
    ['an hour', 'time', '"an hour" cannot be read.'],
    ['3 a few', 'count', '"a few" cannot be read.'],
    ['5 furlongs', 'length', '"furlongs" cannot be read.'],
    ['2 3', 'mass', '"3" cannot be read.'],
    ['3 +', 'mass', 'The entry stops where a number should follow.'],
    ['(3', 'mass', 'A parenthesis is opened and not closed.'],
    ['3)', 'mass', '")" cannot be read.'],
    ['()', 'mass', 'The entry stops where a number should follow.'],
    ['1/0', 'mass', 'This divides by zero.'],
    ['1/(2-2) kg', 'mass', 'This divides by zero.'],
    ['2 kg * 3 kg', 'mass', 'Two values with units are multiplied.'],
    ['20 °C + 5 °F', 'temperature', 'Temperatures on two scales cannot be added.'],
    ['20 °C / 5 °F', 'temperature', 'Temperatures on two scales cannot be divided.'],
    ['$5', 'mass', 'This field is not an amount of money.'],
    ['1e308*1e308', 'mass', 'The number is too large.'],
    ['NaN', 'mass', '"NaN" cannot be read.'],
    ['Infinity', 'mass', '"Infinity" cannot be read.'],
    ['0x10', 'mass', '"x10" cannot be read.'],
    [`${'('.repeat(150)}1`, 'mass', 'A parenthesis is opened and not closed.'],
    ['1'.repeat(201), 'mass', 'The entry is too long.'],
  ])('%j for %s', (text, dimension, problem) => {
    const result = read(text, dimension, unitSymbols(dimension)[0] ?? '');
    expect(!result.ok && result.error.problem).toBe(problem);
    expect(!result.ok && result.error.remedy).toMatch(/\.$/);
  });
});

it('says which units a field takes', () => {
  const remedy = (text: string, dimension: Dimension) => {
    const result = read(text, dimension, unitSymbols(dimension)[0] ?? '');
    return result.ok ? '' : result.error.remedy;
  };
  expect(remedy('5 kg', 'length')).toMatch(/^It takes m, .*, or a plain number\.$/);
  expect(remedy('5k', 'money')).toBe('Leave the unit out.');
});

describe('readCell on anything', () => {
  const dimension = fc.constantFrom(...(Object.keys(DIMENSIONS) as Dimension[]));

  it('never throws and never gives a value that is not finite', () => {
    const signs = fc.constantFrom(
      '1',
      '2.5',
      '1,000',
      '(',
      ')',
      '+',
      '-',
      '*',
      '/',
      '%',
      '$',
      ' ',
      'kg',
      '°F',
      'm²',
      'e9',
      ',',
      '=',
      'USD',
      '\u2212',
    );
    const texts = fc.oneof(
      fc.string({ maxLength: 60 }),
      fc.array(signs, { maxLength: 20 }).map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(texts, dimension, (text, name) => {
        const result = read(text, name, unitSymbols(name)[0] ?? '');
        if (!result.ok) return;
        expect(Number.isFinite(result.value.value)).toBe(true);
        expect(unitSymbols(name)).toContain(result.value.unit);
      }),
      { numRuns: 5000 },
    );
  });

  interface Sum {
    readonly text: string;
    readonly value: number;
  }
  const { sum } = fc.letrec<{ sum: Sum }>((tie) => ({
    sum: fc.oneof(
      { maxDepth: 4 },
      fc.integer({ min: 0, max: 9999 }).map((value) => ({ text: String(value), value })),
      fc.tuple(tie('sum'), fc.constantFrom('+', '-', '*'), tie('sum')).map(([left, sign, right]) => {
        const value = { '+': left.value + right.value, '-': left.value - right.value, '*': left.value * right.value }[
          sign
        ];
        return { text: `(${left.text}) ${sign} (${right.text})`, value };
      }),
    ),
  }));

  it('computes sums as they are written', () => {
    fc.assert(
      fc.property(sum, ({ text, value }) => {
        fc.pre(text.length <= 200 && Number.isFinite(value));
        const result = read(`0 + ${text}`, 'count', '');
        if (text.length <= 196) expect(result.ok && result.value.value).toBe(value + 0);
      }),
      { numRuns: 1000 },
    );
  });

  it.each([
    ['2+3*4', 14],
    ['2*3+4', 10],
    ['10-2-3', 5],
    ['100/5/2', 10],
    ['-2*-3', 6],
    ['2*(3+4)*5', 70],
    ['8/2*4', 16],
  ])('%s is %d', (text, value) => {
    const result = read(text, 'count', '');
    expect(result.ok && result.value.value).toBe(value);
  });
});

describe('readFieldCell', () => {
  const demand = fieldOf('product.weeklyDemand') as QuantityField;
  const area = fieldOf('chamber.shelfArea') as QuantityField;
  const month = fieldOf('scenario.purchaseMonth') as NumberField;

  it('checks the range and says it in the unit that was typed', () => {
    const result = readFieldCell('2000 ft²', {
      field: area,
      path: 'chambers.0.shelfArea',
      shown: 'm²',
      currency: 'USD',
    });
    expect(result).toEqual({
      ok: false,
      error: {
        severity: 'error',
        field: 'chambers.0.shelfArea',
        value: '2000 ft²',
        problem: 'Shelf area is 2000 ft², which is too high.',
        remedy: 'Give a value from 0.5382 ft² to 645.8 ft².',
      },
    });
  });

  it('takes an emptied cell only where the field may be empty', () => {
    expect(readFieldCell(' ', { field: demand, path: 'p', shown: 'kg/week', currency: 'USD' })).toEqual({
      ok: true,
      value: null,
    });
    expect(readFieldCell(' ', { field: area, path: 'p', shown: 'm²', currency: 'USD' }).ok).toBe(false);
  });

  it('brings bare numbers into the unit in which the plan keeps them', () => {
    const cell = { field: month, path: 'scenarios.1.purchaseMonth', shown: 'month', currency: 'USD' };
    expect(readFieldCell('1 year', cell)).toMatchObject({
      ok: true,
      value: { value: 12, unit: 'month', words: '1 year = 12 month' },
    });
    expect(readFieldCell('2.5', cell)).toMatchObject({
      ok: false,
      error: { problem: 'Purchase month must be a whole number.' },
    });
  });
});
