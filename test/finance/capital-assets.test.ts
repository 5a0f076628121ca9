import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assetBook, type CapitalPurchase } from '../../lib/finance/capital-assets.ts';

const pump: CapitalPurchase = {
  name: 'Pump',
  month: 0,
  amount: 6000,
  lifeMonths: 24,
  salvage: 600,
  method: { kind: 'straightLine' },
  expensedShare: 0,
  replaced: false,
  sold: null,
};

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

describe('assetBook', () => {
  it('writes a purchase down to its salvage and keeps it', () => {
    const book = assetBook([pump], 36);
    expect(book.bought[0]).toBe(600000);
    expect(sum(book.depreciation)).toBe(540000);
    expect(book.bookValue.at(-1)).toBe(60000);
    expect(book.marketValue).toBe(60000);
    expect(sum(book.sold)).toBe(0);
  });

  it('buys it again each time its life ends, selling the old one at salvage', () => {
    const book = assetBook([{ ...pump, replaced: true }], 60);
    expect(book.bought.flatMap((amount, month) => (amount ? [month] : []))).toEqual([0, 24, 48]);
    expect(book.sold.flatMap((amount, month) => (amount ? [month] : []))).toEqual([24, 48]);
    expect(sum(book.gain)).toBe(0);
    expect(book.marketValue).toBe(330000);
  });

  it('books the gain or loss of a sale', () => {
    const book = assetBook([{ ...pump, sold: { month: 12, amount: 5000 } }], 24);
    expect(book.sold[12]).toBe(500000);
    expect(book.gain[12]).toBe(500000 - (600000 - 270000));
    expect(book.bookValue[12]).toBe(0);
    expect(book.depreciation[12]).toBe(0);
    expect(book.marketValue).toBe(0);
  });

  it('sells the one that is there when the sale comes, if it has been replaced before', () => {
    const sale = (month: number) =>
      assetBook([{ ...pump, replaced: true, sold: { month, amount: 5000 } }], 60).sold.flatMap((amount, at) =>
        amount ? [[at, amount]] : [],
      );
    expect(sale(30)).toEqual([
      [24, 60000],
      [30, 500000],
    ]);
    expect(sale(24)).toEqual([[24, 500000]]);
    expect(sale(12)).toEqual([[12, 500000]]);
  });

  it('brings in what the shop owns already at book value', () => {
    const book = assetBook([{ ...pump, month: -12 }], 24);
    expect(book.opening).toBe(330000);
    expect(sum(book.bought)).toBe(0);
    expect(book.bookValue[11]).toBe(60000);
    const renewed = assetBook([{ ...pump, month: -50, replaced: true }], 24);
    expect(renewed.bought.flatMap((amount, month) => (amount ? [month] : []))).toEqual([22]);
    const justNow = assetBook([{ ...pump, month: -24, replaced: true }], 24);
    expect(justNow.sold[0]).toBe(60000);
    expect(justNow.opening).toBe(60000);
  });

  it('leaves a loss when a table writes off slower than the thing lasts', () => {
    const slow: CapitalPurchase = {
      ...pump,
      replaced: true,
      method: { kind: 'table', table: 'recovery7' },
      salvage: 0,
    };
    expect(sum(assetBook([slow], 36).gain)).toBeLessThan(0);
  });

  it('keeps its identity month by month for any purchases', () => {
    const purchase = fc.record({
      name: fc.constant('Thing'),
      month: fc.integer({ min: -60, max: 60 }),
      amount: fc.integer({ min: 0, max: 1e7 }).map((cents) => cents / 100),
      lifeMonths: fc.integer({ min: 1, max: 90 }),
      salvage: fc.integer({ min: 0, max: 1e6 }).map((cents) => cents / 100),
      method: fc.constantFrom(
        { kind: 'straightLine' as const },
        { kind: 'table' as const, table: 'recovery5' as const },
      ),
      expensedShare: fc.constantFrom(0, 0.5, 1),
      replaced: fc.boolean(),
      sold: fc.constant(null),
    });
    fc.assert(
      fc.property(fc.array(purchase, { maxLength: 5 }), (purchases) => {
        const book = assetBook(purchases, 48);
        let value = book.opening;
        for (let month = 0; month < 48; month += 1) {
          value += (book.bought[month] ?? 0) - ((book.sold[month] ?? 0) - (book.gain[month] ?? 0));
          value -= book.depreciation[month] ?? 0;
          expect(book.bookValue[month]).toBe(value);
        }
      }),
      { seed: 9 },
    );
  });

  it('refuses a sale before the purchase and months that are not whole', () => {
    expect(() => assetBook([{ ...pump, sold: { month: 0, amount: 1 } }], 12)).toThrow(RangeError);
    expect(() => assetBook([{ ...pump, month: 0.5 }], 12)).toThrow(RangeError);
  });
});
