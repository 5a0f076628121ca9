import { fail, type Result, succeed } from '../../result.ts';
import { shownUnit } from '../../units/convert.ts';
import type { UnitSystem } from '../../units/dimension.ts';
import { type CellProblem, cellProblem } from '../cell/amount.ts';
import { plainSigns, unitAt } from '../cell/unit-forms.ts';
import { COLUMN_WORDS, columnField, type FigureColumn, isFigureColumn, type LogColumn } from './log-columns.ts';

/** One understood column of a table. */
export interface HeadColumn {
  readonly column: LogColumn;
  /** Position in the row. */
  readonly place: number;
  /** As it stands in the text. */
  readonly head: string;
  /** Unit of bare figures; empty for words. */
  readonly unit: string;
  /** False when the unit was not said and the plan's own was taken. */
  readonly unitSaid: boolean;
}

export interface LogHeader {
  readonly columns: readonly HeadColumn[];
  /** Heads that say nothing to us. */
  readonly unknown: readonly string[];
}

function plainHead(head: string): string {
  return plainSigns(head.toLowerCase().replace(/[()[\]{},:;_]/g, ' '));
}

const BY_WORDS: ReadonlyMap<string, LogColumn> = new Map(
  (Object.keys(COLUMN_WORDS) as LogColumn[]).flatMap((column) => {
    const label = isFigureColumn(column) ? [columnField(column).label.toLowerCase()] : [];
    return [...label, ...COLUMN_WORDS[column]].map((words) => [words, column] as const);
  }),
);

/** The unit of bare figures when the head does not say it: hours and minutes as the register has them, the rest as shown. */
function unsaidUnit(column: LogColumn, system: UnitSystem): string {
  if (!isFigureColumn(column)) return '';
  const { dimension, unit } = columnField(column);
  return dimension === 'time' ? unit : shownUnit(dimension, system);
}

function saidUnit(column: FigureColumn, text: string): string | undefined {
  const form = unitAt(text, 0, columnField(column).dimension);
  return form && form.text.length === text.length ? form.unit.symbol : undefined;
}

function withUnit(words: readonly string[]): { column: FigureColumn; unit: string } | undefined {
  for (let cut = words.length - 1; cut > 0; cut -= 1) {
    const column = BY_WORDS.get(words.slice(0, cut).join(' '));
    if (column === undefined || !isFigureColumn(column)) continue;
    const unit = saidUnit(column, words.slice(cut).join(' '));
    if (unit !== undefined) return { column, unit };
  }
  return undefined;
}

function columnOf(head: string, place: number, system: UnitSystem): HeadColumn | undefined {
  const plain = plainHead(head);
  const column = BY_WORDS.get(plain);
  // Hours and minutes are their own unit.
  if (column)
    return {
      column,
      place,
      head,
      unit: unsaidUnit(column, system),
      unitSaid: /^(?:\w+ )?(?:hours|minutes)$/.test(plain),
    };
  const found = withUnit(plain.split(' ')) ?? withUnit(plain.replace(/ in (?=\S+$)/, ' ').split(' '));
  return found && { ...found, place, head, unitSaid: true };
}

const EXAMPLE = 'date, chamber, product, wet kg, dry kg, hours, highest pressure mTorr, note';

/** What each column of a table is, by its first row: plain words with a unit, such as "wet lb". */
export function readHeader(heads: readonly string[], system: UnitSystem): Result<LogHeader, CellProblem> {
  const read = heads.map((head, place) => ({ head, column: columnOf(head, place, system) }));
  const columns = read.flatMap(({ column }) => (column ? [column] : []));
  if (columns.length < 2) {
    return cellProblem('The first line does not name the columns.', `Put a line above, such as: ${EXAMPLE}.`);
  }
  const twice = columns.find((one, i) => columns.findIndex((other) => other.column === one.column) < i);
  if (twice) {
    const first = columns.find((other) => other.column === twice.column);
    const problem = `Columns "${first?.head}" and "${twice.head}" both give the ${COLUMN_WORDS[twice.column][0]}.`;
    return fail({ problem, remedy: 'Keep one of them, or rename the other.' });
  }
  return succeed({ columns, unknown: read.flatMap(({ head, column }) => (column || head === '' ? [] : [head])) });
}
