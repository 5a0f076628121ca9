import type { Cents } from '../../finance/cents.ts';
import type { OutputField } from '../../model/outputs/output-field.ts';
import { OUTPUTS } from '../../model/outputs.ts';
import type { ScenarioResult } from '../../model/scenario-result.ts';
import type { DataTable } from '../data-table.ts';
import { formatFixed, NONE } from '../format-number.ts';
import { quantityWithUnit, type ShownAs } from '../format-quantity.ts';
import type { DocumentBlock, DocumentRow, DocumentTable } from './document-types.ts';

/** The output of the register with this id. Throws RangeError when there is none. */
export function outputOf(id: string): OutputField {
  const output = OUTPUTS.find((candidate) => candidate.id === id);
  if (!output) throw new RangeError(`no output "${id}"`);
  return output;
}

/** A figure of a result as the sheet writes it, with its unit. */
export function outputText(id: string, result: ScenarioResult, shown: ShownAs): string {
  const output = outputOf(id);
  return quantityWithUnit(output.read(result), output.dimension, shown);
}

/** Money to the cent, without a sign; a dash for nothing. */
export function centsText(cents: Cents): string {
  return cents === 0 ? '–' : formatFixed(cents / 100, 2);
}

/** Whole money of cents; a dash for nothing. */
export function wholeText(cents: Cents): string {
  return cents === 0 ? '–' : formatFixed(cents / 100, 0);
}

/** A ratio such as debt cover. */
export function ratioText(value: number | null): string {
  return value === null ? NONE : formatFixed(value, 2);
}

/** Money with two decimals, for a column whose head carries the currency. */
export function exactMoneyText(value: number | null | undefined): string {
  return value === null || value === undefined ? NONE : formatFixed(value, 2);
}

/** Money with its sign, in whole units from a hundred on, as the sheet has it. */
export function moneyText(value: number | null, shown: ShownAs): string {
  return quantityWithUnit(value, 'money', shown);
}

/** A month of the plan as people count, from 1. */
export function monthText(month: number): string {
  return `month ${month + 1}`;
}

/** Short units, which no line may begin with. */
const FIGURE_AND_UNIT = /(\d) (?=(?:%|lb|kg|h|A)(?![A-Za-z]))/g;

export function words(text: string): DocumentBlock {
  return { kind: 'words', text: text.replace(FIGURE_AND_UNIT, '$1\u00a0') };
}

export function plain(...cells: readonly string[]): DocumentRow {
  return { cells, kind: 'plain' };
}

export function total(...cells: readonly string[]): DocumentRow {
  return { cells, kind: 'total' };
}

export function tableBlock(table: DocumentTable): DocumentBlock {
  return { kind: 'table', table };
}

/** A table of the evidence as a table of a document. */
export function fromDataTable({ caption, head, rows }: DataTable, figuresFrom = 1): DocumentBlock {
  return tableBlock({ caption, head, rows: rows.map((cells) => plain(...cells)), figuresFrom });
}
