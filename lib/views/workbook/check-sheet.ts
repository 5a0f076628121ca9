import {
  type CellRange,
  cents,
  type Expression,
  either,
  highestOf,
  isEqual,
  largest,
  lowestOf,
  minus,
  negative,
  said,
  sumOf,
} from './expression.ts';
import { SheetDraft } from './sheet-draft.ts';
import type { Statements } from './statement-sheet.ts';
import type { WorkbookSheet } from './workbook-types.ts';

/** How far a range strays from nothing on either side. */
function furthest(range: CellRange): Expression {
  return largest(highestOf(range), negative(lowestOf(range)));
}

function checksOf(name: string, { sheet, rows, balanceCheck }: Statements): readonly (readonly [string, Expression])[] {
  const last = sheet.horizon - 1;
  const all = (id: 'net' | 'netProfit') => sumOf(rows[id].range(0, last));
  const change = (id: 'cash' | 'retainedProfit') => minus(rows[id].at(last), rows[id].at(-1));
  return [
    [`${name}: assets less debts and equity, furthest month`, furthest(balanceCheck.range(-1, last))],
    [`${name}: changes of cash against the bank at the end`, minus(all('net'), change('cash'))],
    [`${name}: net profits against profit kept at the end`, minus(all('netProfit'), change('retainedProfit'))],
  ];
}

/** The sheet of checks: differences that must be nothing whatever is changed. */
export function checkSheet(
  ways: readonly (readonly [string, Statements])[],
  more: readonly (readonly [string, Expression])[],
): {
  readonly sheet: WorkbookSheet;
  readonly verdict: Expression;
} {
  const draft = new SheetDraft('Checks');
  draft.text(draft.takeRow(), 0, 'Checks: each must be 0.00', 'title');
  const checks = [...ways.flatMap(([name, statements]) => checksOf(name, statements)), ...more];
  const cells = checks.map(([label, difference]) => {
    const row = draft.takeRow();
    draft.text(row, 0, label);
    return draft.formula(row, 1, cents(difference), 'cents', 'check');
  });
  const first = 1;
  const range = draft.range(
    [first, 1],
    [first + cells.length - 1, 1],
    cells.map((cell) => cell.value),
  );
  const row = draft.takeRow(1);
  draft.text(row, 0, 'All together', 'total');
  const verdict = either(isEqual(furthest(range), 0), said('all in order'), said('something does not add up'));
  return {
    sheet: draft.finish([58, 16], { rows: 1, columns: 0 }),
    verdict: draft.formula(row, 1, verdict, 'text', 'total'),
  };
}
