import { seasonWeights } from '../../inputs/season-weights.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { columnLetters } from './cell-address.ts';
import type { CellRange } from './expression.ts';
import { type NameBook, nameFor } from './name-book.ts';
import { SheetDraft } from './sheet-draft.ts';
import type { WorkbookSheet } from './workbook-types.ts';

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

/** The sheet of seasons, and the weights of each product by its id. */
export function seasonSheet(
  plan: Plan,
  names: NameBook,
): { readonly sheet: WorkbookSheet; readonly seasons: ReadonlyMap<string, CellRange> } {
  const draft = new SheetDraft('Seasons');
  const seasons = new Map<string, CellRange>();
  draft.text(
    draft.takeRow(),
    0,
    'Seasons: how much of each product the market takes by calendar month; only proportions count',
    'title',
  );
  const head = draft.takeRow();
  MONTHS.forEach((month, k) => {
    draft.text(head, 1 + k, month, 'figureHead');
  });
  for (const product of plan.products) {
    const row = draft.takeRow();
    const weights = seasonWeights(product);
    draft.text(row, 0, product.name);
    weights.forEach((weight, k) => {
      draft.number(row, 1 + k, weight, 'input', 'figure');
    });
    const place = `'${draft.name}'!$B$${row + 1}:$${columnLetters(12)}$${row + 1}`;
    seasons.set(product.id, names.giveRange(nameFor('season', product.id), place, weights));
  }
  return { sheet: draft.finish([34, 9], { rows: 2, columns: 1 }), seasons };
}
