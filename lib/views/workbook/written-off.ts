import {
  type CellRange,
  cents,
  type Expression,
  either,
  entryOf,
  isAtMost,
  largest,
  minus,
  over,
  plus,
  remainder,
  smallest,
  times,
  wholePart,
} from './expression.ts';
import { SheetDraft } from './sheet-draft.ts';
import type { WorkbookContext } from './workbook-context.ts';
import type { WorkbookSheet } from './workbook-types.ts';

/**
 * What has been written off of a thing by the end of a month.
 * @param age months it has been held by then, 1 or more
 * @param from month it was bought in, 1 for the first of the plan
 */
export type WrittenOff = (cost: Expression, salvage: Expression, age: Expression, from: Expression) => Expression;

/** Evenly over the depreciation life, after the share that is written off at once. */
function evenly({ assumptions }: WorkbookContext): WrittenOff {
  const share = assumptions.at('financing.expensedShare');
  const life = assumptions.at('financing.depreciationLife');
  return (cost, salvage, age) => {
    const expensed = cents(times(cost, share));
    const rest = largest(0, minus(minus(cost, expensed), salvage));
    return plus(expensed, cents(over(times(rest, smallest(age, life)), life)));
  };
}

interface Table {
  /** Shares of the years and their running total. */
  readonly shares: CellRange;
  readonly totals: CellRange;
}

/** Share of the basis written off after some months by a table of yearly shares, the first year's over the months left of it. */
function tabledShare({ shares, totals }: Table, age: Expression, from: Expression): Expression {
  const years = shares.values.length;
  const firstYear = minus(12, remainder(minus(from, 1), 12));
  const later = over(minus(age, firstYear), 12);
  const full = wholePart(later);
  const begun = either(
    isAtMost(plus(full, 2), years),
    times(entryOf(shares, smallest(plus(full, 2), years)), minus(later, full)),
    0,
  );
  const after = plus(entryOf(totals, smallest(plus(full, 1), years)), begun);
  const sum = either(isAtMost(age, firstYear), over(times(entryOf(shares, 1), age), firstYear), after);
  return over(sum, entryOf(totals, years));
}

function byTable({ assumptions }: WorkbookContext, table: Table): WrittenOff {
  const share = assumptions.at('financing.expensedShare');
  return (cost, _salvage, age, from) => {
    const expensed = cents(times(cost, share));
    return plus(expensed, cents(times(minus(cost, expensed), tabledShare(table, age, from))));
  };
}

function tableSheet(context: WorkbookContext, percents: readonly number[]): { sheet: WorkbookSheet; table: Table } {
  const draft = new SheetDraft('Write-off table');
  draft.text(draft.takeRow(), 0, 'Yearly shares as published; a tax adviser says which table holds', 'title');
  const head = draft.takeRow();
  ['Year', 'Share, %', 'So far, %'].forEach((words, column) => {
    draft.text(head, column, words, column === 0 ? 'head' : 'figureHead');
  });
  const totals: Expression[] = [];
  percents.forEach((percent, year) => {
    const row = draft.takeRow();
    draft.number(row, 0, year + 1, 'label', 'count');
    const share = draft.number(row, 1, percent, 'handbook', 'figure');
    const before = totals.at(-1);
    totals.push(draft.formula(row, 2, before ? plus(before, share) : share, 'figure'));
  });
  const last = head + percents.length;
  const shares = draft.range([head + 1, 1], [last, 1], percents);
  const cells = draft.range(
    [head + 1, 2],
    [last, 2],
    totals.map((total) => total.value),
  );
  const named = {
    shares: context.names.giveRange('write_off_shares', fixed(shares), shares.values),
    totals: context.names.giveRange('write_off_so_far', fixed(cells), cells.values),
  };
  return { sheet: draft.finish([10, 14, 14], { rows: 2, columns: 0 }), table: named };
}

/** A range as a name needs it, with dollar signs. */
function fixed({ text }: CellRange): string {
  return text.replace(/(?<=[!:])([A-Z]+)(\d+)/g, '$$$1$$$2');
}

/** How things are written off, and the sheet with the table where there is one. */
export function writtenOff(context: WorkbookContext): {
  readonly rule: WrittenOff;
  readonly sheet: WorkbookSheet | null;
} {
  const { writeOffTable } = context.basis;
  if (writeOffTable === null) return { rule: evenly(context), sheet: null };
  const { sheet, table } = tableSheet(context, writeOffTable);
  return { rule: byTable(context, table), sheet };
}
