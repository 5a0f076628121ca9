import { describe, expect, it } from 'vitest';
import {
  countOf,
  formatFixed,
  formatOrdinal,
  formatPercent,
  formatSensible,
  formatTiny,
} from '../../lib/views/format-number.ts';

describe('formatFixed', () => {
  it('marks thousands and uses a true minus', () => {
    expect(formatFixed(1234567.891, 1)).toBe('1,234,567.9');
    expect(formatFixed(-1234, 0)).toBe('−1,234');
  });

  it('never shows a minus before zero', () => {
    expect(formatFixed(-0.004, 2)).toBe('0.00');
    expect(formatFixed(-0, 0)).toBe('0');
  });
});

describe('formatSensible', () => {
  it.each([
    [0, '0'],
    [12345.6, '12,346'],
    [123.4, '123'],
    [99.96, '100'],
    [12.34, '12.3'],
    [1.234, '1.23'],
    [1, '1.00'],
    [0.01234, '0.0123'],
    [-0.5, '−0.500'],
  ])('%d is %s', (value, text) => {
    expect(formatSensible(value)).toBe(text);
  });
});

describe('formatPercent', () => {
  it.each([
    [0, '0 %'],
    [0.042, '4.2 %'],
    [0.0996, '10 %'],
    [0.61, '61 %'],
    [1.006, '101 %'],
    [-0.05, '−5.0 %'],
  ])('%d is %s', (share, text) => {
    expect(formatPercent(share)).toBe(text);
  });
});

describe('words for counts', () => {
  it('knows English ordinals', () => {
    expect([1, 2, 3, 4, 11, 12, 13, 21, 22, 103].map(formatOrdinal)).toEqual([
      '1st',
      '2nd',
      '3rd',
      '4th',
      '11th',
      '12th',
      '13th',
      '21st',
      '22nd',
      '103rd',
    ]);
  });

  it('knows one from many', () => {
    expect([countOf(1, 'cell'), countOf(0, 'cell'), countOf(2, 'batch', 'batches')]).toEqual([
      '1 cell',
      '0 cells',
      '2 batches',
    ]);
  });
});

describe('formatTiny', () => {
  it.each([
    [0, '0'],
    [12.34, '12.3'],
    [0.00123, '0.00123'],
    [0.0000149, '1.49 × 10⁻⁵'],
    [-2e-10, '−2.00 × 10⁻¹⁰'],
  ])('%d is %s', (value, text) => {
    expect(formatTiny(value)).toBe(text);
  });
});
