import { describe, expect, it } from 'vitest';
import { mixText, parseMixText } from '../../lib/views/mix-text.ts';

const PRODUCTS = [
  { id: 'berry', name: 'Strawberry slices' },
  { id: 'soup', name: 'Bean soup' },
  { id: 'corn', name: 'Sweetcorn' },
];

function sharesOf(text: string): Record<string, number> | string {
  const parsed = parseMixText(text, PRODUCTS);
  return parsed.ok
    ? Object.fromEntries(parsed.value.map((entry) => [entry.product, entry.share]))
    : parsed.error.problem;
}

describe('parseMixText', () => {
  it.each([
    ['Strawberry slices 40 %, Bean soup 60 %', { berry: 40, soup: 60 }],
    ['strawberry 40, SOUP 60', { berry: 40, soup: 60 }],
    ['40 % berry; 60 % of Bean soup', { berry: 40, soup: 60 }],
    ['40% strawberry; 60% of bean', { berry: 40, soup: 60 }],
    ['soup: 25\ncorn: 75', { soup: 25, corn: 75 }],
    ['Sweetcorn', { corn: 100 }],
    ['sweet', { corn: 100 }],
  ])('%s', (text, shares) => {
    expect(sharesOf(text)).toEqual(shares);
  });

  it('evens out thirds so that the shares add up to 100', () => {
    const parsed = parseMixText('berry 33.3, soup 33.3, corn 33.3', PRODUCTS);
    expect(parsed.ok && parsed.value.reduce((sum, entry) => sum + entry.share, 0)).toBeCloseTo(100, 10);
  });

  it.each([
    ['', 'The mix is empty.'],
    [' , ', 'The mix is empty.'],
    ['Soup 40, corn 50', 'The shares add up to 90 %.'],
    ['Soup 70, corn 50', 'The shares add up to 120 %.'],
    ['Soup 120, corn -20', 'A share is below zero.'],
    ['Soup 50, bean 50', 'A product is named twice.'],
    ['Pickles 100', 'There is no product called "Pickles".'],
    ['Soup, corn 50', '"Soup" has no share.'],
  ])('"%s" is refused', (text, problem) => {
    expect(sharesOf(text)).toBe(problem);
  });

  it('says what mends it', () => {
    const parsed = parseMixText('Soup 40, corn 50', PRODUCTS);
    expect(parsed.ok ? '' : parsed.error.remedy).toBe('Give out 10 % more.');
  });
});

describe('mixText', () => {
  it('writes what parseMixText reads', () => {
    const mix = [
      { product: 'soup', share: 62.5 },
      { product: 'berry', share: 37.5 },
    ];
    const text = mixText(mix, PRODUCTS);
    expect(text).toBe('Bean soup 62.5 %, Strawberry slices 37.5 %');
    expect(parseMixText(text, PRODUCTS)).toEqual({ ok: true, value: mix });
  });

  it('leaves out what is not made', () => {
    const mix = [
      { product: 'soup', share: 100 },
      { product: 'corn', share: 0 },
    ];
    expect(mixText(mix, PRODUCTS)).toBe('Bean soup 100 %');
  });
});
