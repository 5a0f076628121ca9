import { LIMITS } from '../../plan/limits.ts';
import {
  BATCH_COLUMNS,
  columnField,
  type FigureColumn,
  type LogColumn,
  TEST_COLUMNS,
} from '../../plan/log-text/log-columns.ts';
import { withLogIds } from '../../plan/log-text/log-ids.ts';
import type { UnnamedEntry } from '../../plan/log-text/read-log-row.ts';
import type { LogEntry, Plan } from '../../plan/plan-types.ts';
import { readFieldCell } from '../../plan/read-cell.ts';
import { logEntryFindings } from '../../plan/rules/log-rule.ts';
import { isDate } from '../../plan/text-schemas.ts';
import { fail, type Result, succeed } from '../../result.ts';
import { logFigureText, logUnit } from './log-figure.ts';

/** A form for one entry as it is being filled in: texts and choices, right or wrong. */
export interface LogDraft {
  readonly kind: LogEntry['kind'];
  /** Id of the entry that is being changed; null for a new one. */
  readonly id: string | null;
  readonly texts: Readonly<Record<LogColumn, string>>;
}

/** What is wrong with a draft, by column. */
export type DraftFaults = Partial<Record<LogColumn, string>>;

const EMPTY: Readonly<Record<LogColumn, string>> = {
  date: '',
  chamber: '',
  product: '',
  wet: '',
  dry: '',
  hours: '',
  highestPressure: '',
  from: '',
  to: '',
  minutes: '',
  note: '',
};

/** The figures that a draft of a kind asks for. */
export function draftFigures(kind: LogEntry['kind']): readonly FigureColumn[] {
  return kind === 'batch' ? BATCH_COLUMNS : TEST_COLUMNS;
}

/** An empty form that takes for granted what was so the last time. @param today year-month-day */
export function newDraft(plan: Plan, kind: LogEntry['kind'], today: string): LogDraft {
  const last = plan.batchLog.at(-1);
  const lastBatch = plan.batchLog.findLast((entry) => entry.kind === 'batch');
  const inUse = plan.scenarios[0]?.chambers.find(({ count }) => count > 0)?.chamber;
  const chamber = last?.chamber ?? inUse ?? plan.chambers[0]?.id ?? '';
  const product = lastBatch?.kind === 'batch' ? lastBatch.product : (plan.products[0]?.id ?? '');
  return { kind, id: null, texts: { ...EMPTY, date: today, chamber, product } };
}

/** A form that holds an entry of the log. */
export function draftOf(plan: Plan, entry: LogEntry): LogDraft {
  const values = entry as unknown as Readonly<Record<string, number | null>>;
  const figures = draftFigures(entry.kind).map((column) => [
    column,
    logFigureText(values[column] ?? null, column, plan.site.unitSystem),
  ]);
  const { kind, id, date, chamber, note } = entry;
  const product = entry.kind === 'batch' ? entry.product : '';
  return { kind, id, texts: { ...EMPTY, ...Object.fromEntries(figures), date, chamber, product, note } };
}

/** The figure as it was when its text was not touched: showing it in another unit must not change it. */
function untouched(plan: Plan, draft: LogDraft, column: FigureColumn): number | null | undefined {
  const entry = draft.id === null ? undefined : plan.batchLog.find(({ id }) => id === draft.id);
  if (!entry || entry.kind !== draft.kind) return undefined;
  const value = (entry as unknown as Readonly<Record<string, number | null>>)[column] ?? null;
  return logFigureText(value, column, plan.site.unitSystem) === draft.texts[column] ? value : undefined;
}

function readFigure(plan: Plan, draft: LogDraft, column: FigureColumn): Result<number | null, string> {
  const held = untouched(plan, draft, column);
  if (held !== undefined) return succeed(held);
  const field = columnField(column);
  const text = draft.texts[column].trim();
  if (text === '' && !field.nullable) return fail(`Fill in: ${field.label.toLowerCase()}.`);
  const { currency, unitSystem } = plan.site;
  const read = readFieldCell(text, { field, path: column, shown: logUnit(column, unitSystem), currency });
  if (!read.ok) return fail(`${read.error.problem} ${read.error.remedy}`);
  return succeed(read.value === null ? null : Number(read.value.value.toPrecision(7)));
}

function textFaults(plan: Plan, { kind, texts }: LogDraft): DraftFaults {
  const has = (items: readonly { readonly id: string }[], id: string) => items.some((item) => item.id === id);
  return {
    ...(isDate(texts.date) ? {} : { date: 'Choose a date.' }),
    ...(has(plan.chambers, texts.chamber) ? {} : { chamber: 'Choose a chamber.' }),
    ...(kind === 'pressureRise' || has(plan.products, texts.product) ? {} : { product: 'Choose a product.' }),
    ...(texts.note.length <= LIMITS.note ? {} : { note: `Keep it within ${LIMITS.note} characters.` }),
  };
}

/** The entry a draft stands for, or what is wrong with it, field by field. */
export function readDraft(plan: Plan, draft: LogDraft): Result<LogEntry, DraftFaults> {
  const { kind, texts } = draft;
  const faults = textFaults(plan, draft);
  const figures: Partial<Record<FigureColumn, number | null>> = {};
  for (const column of draftFigures(kind)) {
    const read = readFigure(plan, draft, column);
    if (read.ok) figures[column] = read.value;
    else faults[column] = read.error;
  }
  if (Object.keys(faults).length > 0) return fail(faults);
  const { date, chamber, product, note } = texts;
  const unnamed = { kind, date, chamber, ...(kind === 'batch' ? { product } : {}), ...figures, note };
  const [fresh] = withLogIds([unnamed as UnnamedEntry], plan.batchLog);
  const entry = { ...fresh, ...(draft.id === null ? {} : { id: draft.id }) } as LogEntry;
  const wrong = logEntryFindings(entry, '').map(({ field, problem, remedy }) => [
    field.slice(1),
    `${problem} ${remedy}`,
  ]);
  return wrong.length > 0 ? fail(Object.fromEntries(wrong)) : succeed(entry);
}
