/** What a cell holds. Text is never taken for a formula, whatever it begins with. */
export type CellContent =
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'number'; readonly value: number }
  /** @property formula without its equals sign; @property value what it comes to */
  | { readonly kind: 'formula'; readonly formula: string; readonly value: number | string };

/** What a cell is to its reader; colours and borders follow. */
export type CellLook =
  | 'title'
  | 'heading'
  | 'head'
  /** The head of a column of figures. */
  | 'figureHead'
  | 'label'
  | 'note'
  /** A longer note that runs over several lines in its own cell. */
  | 'wrapped'
  /** An assumption that may be changed: measured or quoted, from a handbook, or a guess. */
  | 'input'
  | 'handbook'
  | 'guess'
  /** What the simulation counted: it does not follow from other cells. */
  | 'counted'
  | 'worked'
  | 'total'
  | 'check';

/** How a number is written. `cents`: money with cents; `money`: whole; `figure`: up to four decimals; `share`: percent. */
export type CellFormat = 'text' | 'cents' | 'money' | 'figure' | 'share' | 'count' | 'ratio';

export interface SheetCell {
  /** From 0. */
  readonly row: number;
  readonly column: number;
  readonly content: CellContent;
  readonly look: CellLook;
  readonly format: CellFormat;
}

/** Cells of a row that are one: the first holds the text, which runs over several lines. */
export interface CellSpan {
  readonly row: number;
  readonly from: number;
  readonly to: number;
}

export interface WorkbookSheet {
  readonly name: string;
  readonly cells: readonly SheetCell[];
  /** Widths of the first columns in characters; the last holds for all that follow. */
  readonly widths: readonly number[];
  readonly spans: readonly CellSpan[];
  /** Rows at the top and columns at the left that stay in sight and are repeated in print. */
  readonly fixed: { readonly rows: number; readonly columns: number };
  /** Pages beside each other on which it is printed. */
  readonly pagesWide: number;
}

export interface DefinedName {
  readonly name: string;
  /** One cell or a range, such as `'Assumptions'!$C$5`. */
  readonly range: string;
}

/** A workbook as plain data, ready to be written in any format. */
export interface WorkbookFile {
  readonly title: string;
  readonly sheets: readonly WorkbookSheet[];
  readonly names: readonly DefinedName[];
}
