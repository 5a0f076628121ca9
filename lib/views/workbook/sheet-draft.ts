import { cellAddress, fixedAddress } from './cell-address.ts';
import { type CellRange, type Expression, reference } from './expression.ts';
import type { CellFormat, CellLook, CellSpan, SheetCell, WorkbookSheet } from './workbook-types.ts';

/** A sheet while it is being filled, row after row. */
export class SheetDraft {
  readonly name: string;
  readonly #cells: SheetCell[] = [];
  readonly #spans: CellSpan[] = [];
  #next = 0;

  constructor(name: string) {
    this.name = name;
  }

  /** The next empty row, which is taken by asking. @param skipped rows left empty before it */
  takeRow(skipped = 0): number {
    const row = this.#next + skipped;
    this.#next = row + 1;
    return row;
  }

  text(row: number, column: number, text: string, look: CellLook = 'label'): void {
    if (text !== '') this.#cells.push({ row, column, content: { kind: 'text', text }, look, format: 'text' });
  }

  /** A longer text over several columns. */
  wideText(row: number, from: number, to: number, text: string): void {
    this.text(row, from, text, 'wrapped');
    this.#spans.push({ row, from, to });
  }

  /** A number that follows from nothing else in the workbook. @returns a reference to it */
  number(row: number, column: number, value: number, look: CellLook, format: CellFormat): Expression {
    this.#cells.push({ row, column, content: { kind: 'number', value }, look, format });
    return this.#at(row, column, value);
  }

  /** @returns a reference to the cell */
  formula(
    row: number,
    column: number,
    expression: Expression,
    format: CellFormat,
    look: CellLook = 'worked',
  ): Expression {
    // A sheet need not name itself.
    const formula = expression.text.replaceAll(this.#prefix(), '');
    const value = Number.isNaN(expression.value) ? (expression.words ?? '') : expression.value;
    this.#cells.push({ row, column, content: { kind: 'formula', formula, value }, look, format });
    return this.#at(row, column, expression.value, expression.words);
  }

  /** Cells from one place to another, both included. @param values what they come to */
  range(from: readonly [number, number], to: readonly [number, number], values: readonly number[]): CellRange {
    return { text: `${this.#prefix()}${cellAddress(...from)}:${cellAddress(...to)}`, values };
  }

  /** Where a cell stands, for a defined name. */
  placeOf(row: number, column: number): string {
    return `${this.#prefix()}${fixedAddress(row, column)}`;
  }

  /** @param pagesWide pages beside each other on which it is printed */
  finish(widths: readonly number[], fixed: WorkbookSheet['fixed'], pagesWide = 1): WorkbookSheet {
    return { name: this.name, cells: this.#cells, spans: this.#spans, widths, fixed, pagesWide };
  }

  #prefix(): string {
    return `'${this.name}'!`;
  }

  #at(row: number, column: number, value: number, words?: string): Expression {
    return reference(`${this.#prefix()}${cellAddress(row, column)}`, value, words);
  }
}
