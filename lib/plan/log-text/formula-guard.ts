/**
 * Text that a spreadsheet would compute or pass on to another program: it begins with a sign of a formula, in its wide form
 * too, perhaps behind blanks and letters that do not show, which some spreadsheets drop.
 */
const FORMULA = /^[\s\p{C}]*[=+\-@|\t\r＝＋－＠]/u;

/** Whether a spreadsheet that opens a text file would take this cell for a formula. A negative number is one by this rule. */
export function isFormula(cell: string): boolean {
  return FORMULA.test(cell);
}

/** The cell behind an apostrophe, which spreadsheets read as: what follows is text. */
export function guarded(cell: string): string {
  return `'${cell}`;
}

/** The cell without the apostrophe that `guarded` put in front of a formula. */
export function withoutGuard(cell: string): string {
  return cell.startsWith("'") && isFormula(cell.slice(1)) ? cell.slice(1) : cell;
}
