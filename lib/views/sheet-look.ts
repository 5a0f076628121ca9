/** How one plan's sheet is looked at: kept in the browser beside the plan, and no part of the plan or of undo. */
export interface SheetLook {
  /** Every column, or only the main ones of each group. */
  readonly isWhole: boolean;
  /** Scenarios side by side as columns, as lenders read them, instead of as rows. */
  readonly isSideways: boolean;
  /** Ids of columns in the wished order; columns that are not named keep their usual place. */
  readonly order: readonly string[];
  /** Columns that are shown (true) or hidden (false) whatever is usual. */
  readonly shown: Readonly<Record<string, boolean>>;
  readonly sort: ColumnSort | null;
  /** What a column must hold for a row to be shown, by the id of the column. */
  readonly filters: Readonly<Record<string, string>>;
}

export interface ColumnSort {
  readonly columnId: string;
  readonly way: 'rising' | 'falling';
}

export const USUAL_LOOK: SheetLook = {
  isWhole: false,
  isSideways: false,
  order: [],
  shown: {},
  sort: null,
  filters: {},
};

/** More than any sheet has; a tampered store must not slow the page down. */
const MOST_COLUMNS = 500;
const LONGEST_FILTER = 200;

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** The entries of an object whose values are right, as an object without any inherited name. */
function entriesOf<Value>(value: unknown, isRight: (item: unknown) => item is Value): Record<string, Value> {
  const entries = isRecord(value) ? Object.entries(value).slice(0, MOST_COLUMNS) : [];
  return Object.fromEntries(
    entries.filter((entry): entry is [string, Value] => isRight(entry[1]) && !(entry[0] in Object.prototype)),
  );
}

function isFlag(value: unknown): value is boolean {
  return typeof value === 'boolean';
}

function isFilter(value: unknown): value is string {
  return typeof value === 'string' && value.trim() !== '' && value.length <= LONGEST_FILTER;
}

function sortOf(value: unknown): ColumnSort | null {
  if (!isRecord(value) || typeof value.columnId !== 'string') return null;
  return { columnId: value.columnId, way: value.way === 'falling' ? 'falling' : 'rising' };
}

function orderOf(value: unknown): readonly string[] {
  const ids = Array.isArray(value) ? value.slice(0, MOST_COLUMNS) : [];
  return ids.filter((id): id is string => typeof id === 'string');
}

function parsed(text: string): Record<string, unknown> {
  try {
    const value: unknown = JSON.parse(text);
    return isRecord(value) ? value : {};
  } catch {
    return {};
  }
}

/** The look that a kept text means; whatever in it cannot be read is as usual. */
export function readLook(text: string): SheetLook {
  const kept = parsed(text);
  return {
    isWhole: kept.isWhole === true,
    isSideways: kept.isSideways === true,
    order: orderOf(kept.order),
    shown: entriesOf(kept.shown, isFlag),
    sort: sortOf(kept.sort),
    filters: entriesOf(kept.filters, isFilter),
  };
}

/** The look as text to be kept. */
export function writeLook(look: SheetLook): string {
  return JSON.stringify(look);
}

/** The look with a filter set on a column, or taken off when it is blank. */
export function withFilter(look: SheetLook, columnId: string, filter: string): SheetLook {
  const { [columnId]: _before, ...others } = look.filters;
  const text = filter.trim().slice(0, LONGEST_FILTER);
  return { ...look, filters: text === '' ? others : { ...others, [columnId]: text } };
}

/** The look with all rows shown, in the order of the plan. */
export function withAllRows(look: SheetLook): SheetLook {
  return { ...look, sort: null, filters: {} };
}
