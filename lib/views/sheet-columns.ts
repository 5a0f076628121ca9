import type { OutputField, OutputGroup } from '../model/outputs/output-field.ts';
import type { EntryColumn } from './entry-column.ts';
import { type ShownAs, unitText } from './format-quantity.ts';

export type SheetGroup = 'setUp' | OutputGroup | 'bottleneck';

export const GROUP_LABELS: Readonly<Record<SheetGroup, string>> = {
  setUp: 'Set-up',
  throughput: 'Throughput',
  vacuum: 'Vacuum',
  cost: 'Cost',
  capital: 'Capital',
  return: 'Return',
  lender: 'Loans and lender',
  risk: 'Failing pumps',
  bottleneck: 'Bottleneck',
};

/** Outputs that stay in view when their group is folded. */
const HEADLINES: ReadonlySet<string> = new Set([
  'batches',
  'dryOut',
  'ceilingByGas',
  'cost.total',
  'capital',
  'payback',
  'dscr',
  'failures.cost',
]);

/** What the sheet needs to know of a column to draw it, whatever stands in it. */
export interface SheetColumn {
  readonly id: string;
  readonly kind: 'entry' | 'output' | 'flag';
  readonly group: SheetGroup;
  readonly label: string;
  readonly unit: string;
  readonly meaning: string;
  /** How it is worked out, for computed columns. */
  readonly formula: string;
  readonly isFigure: boolean;
  readonly isHeadline: boolean;
  readonly width: number;
  readonly options: readonly string[] | null;
}

export const FLAG_COLUMN_ID = 'bottleneck';

/** What the flag is called and means, wherever it is spoken of. */
export const FLAG_WORDS = {
  label: 'What holds it back',
  meaning: 'The one thing of which a quarter more would bring most, or a shared pump that is past its knee.',
  formula: 'largest gain in what is left over a week among fresh runs, each with a quarter more of one thing',
} as const;

const FLAG_COLUMN: SheetColumn = {
  id: FLAG_COLUMN_ID,
  kind: 'flag',
  group: 'bottleneck',
  ...FLAG_WORDS,
  unit: '',
  isFigure: false,
  isHeadline: true,
  width: 206,
  options: null,
};

function ofEntry(column: EntryColumn): SheetColumn {
  const { id, label, unit, meaning, isFigure, isHeadline, width, options } = column;
  return { id, kind: 'entry', group: 'setUp', label, unit, meaning, formula: '', isFigure, isHeadline, width, options };
}

/**
 * Widths of columns whose group's name needs more than a figure does [px]: it has to fit over a single one of them. All
 * headlines together fit the screen of a small laptop.
 */
const GROUP_WIDTHS: Partial<Record<SheetGroup, number>> = { vacuum: 98, return: 84 };

function ofOutput(output: OutputField, shown: ShownAs): SheetColumn {
  const { id, label, group, dimension, meaning, formula } = output;
  return {
    id,
    kind: 'output',
    group,
    label,
    unit: unitText(dimension, shown),
    meaning,
    formula,
    isFigure: true,
    isHeadline: HEADLINES.has(id),
    width: GROUP_WIDTHS[group] ?? 78,
    options: null,
  };
}

/** All columns of the sheet from left to right. */
export function sheetColumns(
  entries: readonly EntryColumn[],
  outputs: readonly OutputField[],
  shown: ShownAs,
): readonly SheetColumn[] {
  return [...entries.map(ofEntry), ...outputs.map((output) => ofOutput(output, shown)), FLAG_COLUMN];
}
