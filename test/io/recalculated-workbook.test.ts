import type { Workbook } from 'exceljs';
import { describe, expect, it } from 'vitest';
import { findOffice } from '../../.tools/office.mjs';
import { workbookBytes } from '../../lib/io/workbook-file.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { simulateShop } from '../../lib/plant/simulate-shop.ts';
import { plantMemory } from '../../lib/risk/plant-memory.ts';
import type { SheetCell, WorkbookFile } from '../../lib/views/workbook/workbook-types.ts';
import { planWith } from '../model/edited-plan.ts';
import { fakeSimulation } from '../model/fake-plant.ts';
import type { Loose } from '../plan/edited-demo.ts';
import { workbookFaults } from '../views/workbook/workbook-faults.ts';
import { type WorkbookOf, workbookOf } from '../views/workbook/workbook-of.ts';
import { recalculate, valueAt } from './recalculate.ts';

/*
 * The formulas are live: assumptions are changed in the file, LibreOffice works it out again with the old figures beside the
 * formulas thrown away, and every cell must come to what the engine makes of a plan with the same changes.
 */

const office = findOffice();

/** Half a cent for money, and what is lost in writing figures down. */
const CENTS = 0.005;
const WRITTEN = 1e-9;

const MADE = new Date('2026-01-01T00:00:00Z');

interface Case {
  readonly before: WorkbookOf;
  readonly after: WorkbookOf;
}

function required(made: WorkbookOf | null): WorkbookOf {
  if (!made) throw new Error('the scenario cannot be worked out');
  return made;
}

/** The invented shop: prices, wages, interest, tax and days change, the week does not. */
function demoCase(): Case {
  const memory = plantMemory(simulateShop, 16, true);
  const plan = planWith(() => {});
  const changed = planWith((document) => {
    const set = (thing: Loose, key: string, value: number) => {
      thing[key] = { value, unit: thing[key].unit, origin: 'measured' };
    };
    set(document.products[0], 'price', 128);
    set(document.crew, 'wage', 24);
    set(document.site, 'electricityPrice', 0.21);
    set(document.site.priceBands[0], 'price', 0.26);
    set(document.pumps[1], 'oilPrice', 31);
    set(document.chambers[0], 'price', 23_900);
    set(document.site, 'contingency', 15);
    set(document.financing.loans[0], 'rate', 12.5);
    set(document.financing.loans[0], 'term', 60);
    set(document.financing, 'taxRate', 31);
    set(document.financing, 'receivableDays', 40);
    set(document.financing, 'discountRate', 15);
    set(document.financing, 'openingCash', 21_000);
  });
  const made = (of: Plan) => required(workbookOf(of, 'six-shared', memory.simulate));
  const before = made(plan);
  const runs = memory.runs();
  const after = made(changed);
  expect(memory.runs()).toBe(runs);
  return { before, after };
}

/** Stages, a table of write-offs, a store, guaranteed hours, grace, old equipment given in: what the invented shop has not. */
function richCase(): Case {
  const rich = (price: number, grace: number, demand: number) =>
    planWith((document) => {
      document.financing.depreciationMethod = 'recovery5';
      document.financing.expensedShare.value = 20;
      document.financing.lossOffset.value = 80;
      document.financing.taxSettled = 'yearly';
      document.financing.loans[0].graceMonths = { value: grace, unit: 'month', origin: 'quoted' };
      document.crew.guaranteed = true;
      document.products[0].unsold = 'keep';
      document.products[0].price = { value: price, unit: 'money/kg', origin: 'quoted' };
      document.products[0].weeklyDemand = { value: demand, unit: 'kg/week', origin: 'guess' };
      document.products[1].unsold = 'discard';
      document.scenarios[2].after = document.scenarios[1].id;
      document.scenarios[2].purchaseMonth = 20;
      document.scenarios[2].extraCapital = { value: -3000, unit: 'money', origin: 'quoted' };
    });
  // Made-up weeks are the same whatever the market takes.
  const made = (of: Plan) => required(workbookOf(of, 'four-shared', fakeSimulation()));
  return { before: made(rich(140, 2, 4)), after: made(rich(95, 5, 4)) };
}

const CHANGEABLE: readonly SheetCell['look'][] = ['input', 'handbook', 'guess'];

function numbersOf(book: WorkbookFile, sheet: string): ReadonlyMap<string, number> {
  const cells = book.sheets.find(({ name }) => name === sheet)?.cells ?? [];
  return new Map(
    cells.flatMap(({ row, column, content, look }) =>
      content.kind === 'number' && CHANGEABLE.includes(look) ? [[`${row} ${column}`, content.value] as const] : [],
    ),
  );
}

/** The workbook with the values of another one's assumptions typed into it, all else left as it is. */
function typedInto(book: WorkbookFile, other: WorkbookFile): WorkbookFile {
  const sheets = book.sheets.map((sheet) => {
    const values = numbersOf(other, sheet.name);
    const cells = sheet.cells.map((cell): SheetCell => {
      const value = CHANGEABLE.includes(cell.look) ? values.get(`${cell.row} ${cell.column}`) : undefined;
      return cell.content.kind === 'number' && value !== undefined
        ? { ...cell, content: { kind: 'number', value } }
        : cell;
    });
    return { ...sheet, cells };
  });
  return { ...book, sheets };
}

function isSame(found: number | string, expected: number | string): boolean {
  if (typeof found !== 'number' || typeof expected !== 'number') return found === expected;
  return Math.abs(found - expected) <= CENTS + WRITTEN * Math.abs(expected);
}

/** Formula cells that come to something else than they should. */
function differences(found: Workbook, expected: WorkbookFile): { readonly cells: number; readonly wrong: string[] } {
  const formulas = expected.sheets.flatMap(({ name, cells }) =>
    cells.flatMap(({ row, column, content }) =>
      content.kind === 'formula' ? [{ name, row, column, ...content }] : [],
    ),
  );
  const wrong = formulas.flatMap(({ name, row, column, value }) => {
    const is = valueAt(found, name, row, column);
    return isSame(is, value) ? [] : [`${name}, row ${row + 1}, column ${column + 1}: ${is} instead of ${value}`];
  });
  return { cells: formulas.length, wrong };
}

describe.skipIf(!office)('a workbook with assumptions changed, worked out again by LibreOffice', () => {
  const cases = { demo: demoCase(), rich: richCase() };
  const recalculated = office
    ? Promise.all(
        Object.values(cases).map(({ before, after }) =>
          workbookBytes(typedInto(before.book, after.book), { paper: 'a4', made: MADE }),
        ),
      ).then((files) => recalculate(office, files))
    : Promise.resolve([]);

  it.each([
    ['the invented shop', 0, cases.demo],
    ['stages, tables, stores and grace', 1, cases.rich],
  ] as const)('comes to what the engine makes of the changed plan: %s', async (_what, place, { before, after }) => {
    const found = (await recalculated)[place] as Workbook;
    const { cells, wrong } = differences(found, after.book);
    expect(wrong.slice(0, 10)).toEqual([]);
    expect(workbookFaults(after.book, after.result)).toEqual([]);
    expect(cells).toBeGreaterThan(20_000);
    // The figures that came with the file were others, so they were not believed.
    expect(differences(found, before.book).wrong.length).toBeGreaterThan(1000);
  });

  it.each([
    ['the invented shop', 0, cases.demo],
    ['stages, tables, stores and grace', 1, cases.rich],
  ] as const)('has the debt cover of every year: %s', async (_what, place, { after }) => {
    const found = (await recalculated)[place] as Workbook;
    const { coverByYear } = after.result.finance;
    const years = after.book.sheets.find(({ name }) => name === 'Years')?.cells ?? [];
    const row = years.find(({ content }) => content.kind === 'text' && content.text === 'Earnings over payments')?.row;
    expect(coverByYear.length).toBeGreaterThan(4);
    coverByYear.forEach((cover, year) => {
      const live = valueAt(found, 'Years', row ?? -1, 2 + year);
      if (cover === null) expect(live).toBe('');
      else expect(live).toBeCloseTo(cover, 5);
    });
  });

  it('has the key figures of the engine', async () => {
    const found = (await recalculated)[0] as Workbook;
    const { finance } = cases.demo.after.result;
    const summary = cases.demo.after.book.sheets[0]?.cells ?? [];
    const live = (label: string) => {
      const named = summary.find(({ content }) => content.kind === 'text' && content.text === label);
      return Number(valueAt(found, 'Summary', named?.row ?? -1, 1));
    };
    const { versusToday } = finance;
    const { payback, rateOfReturn, netPresentValue, modifiedRate, discountedPayback } = versusToday ?? {};
    expect(live('Net present value')).toBeCloseTo(netPresentValue ?? Number.NaN, 1);
    expect(live('Payback')).toBeCloseTo(payback?.kind === 'crossed' ? payback.months : Number.NaN, 5);
    expect(live('Internal rate of return')).toBeCloseTo(
      rateOfReturn?.kind === 'one' ? rateOfReturn.yearly : Number.NaN,
      8,
    );
    expect(live('Modified rate of return')).toBeCloseTo(modifiedRate ?? Number.NaN, 8);
    expect(live('Payback, discounted')).toBeCloseTo(
      discountedPayback?.kind === 'crossed' ? discountedPayback.months : Number.NaN,
      5,
    );
    expect(live('Profitability index')).toBeCloseTo(versusToday?.profitabilityIndex ?? Number.NaN, 5);
    expect(live('Net present value of own money')).toBeCloseTo(versusToday?.financed.netPresentValue ?? Number.NaN, 1);
    expect(live('Least cash in the bank')).toBeCloseTo(finance.lowestCash, 1);
    expect(live('Lowest debt cover of twelve months')).toBeCloseTo(finance.lowestCover ?? Number.NaN, 6);
    expect(live("The same with the owner's hours paid")).toBeCloseTo(finance.lowestCoverOwnerPaid ?? Number.NaN, 6);
  });
});
