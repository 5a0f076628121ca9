import type {
  CellClassParams,
  CellClassRules,
  ColDef,
  ColGroupDef,
  SuppressKeyboardEventParams,
} from 'ag-grid-community';
import { rangeHolds } from '../../lib/views/cell-range.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import { GROUP_LABELS, type SheetColumn, type SheetGroup } from '../../lib/views/sheet-columns.ts';
import { ChoiceEditor } from './choice-editor.tsx';
import { ColumnHead } from './column-head.tsx';
import { EntryEditor } from './entry-editor.tsx';
import { FlagCell } from './flag-cell.tsx';
import { NameCell } from './name-cell.tsx';
import styles from './sheet.module.css';
import type { SheetContext } from './sheet-context.ts';

/** Width below which nothing but the name is kept in view [px]. */
const NARROW = 820;

export interface SheetLayout {
  readonly isNarrow: boolean;
}

export function layoutFor(width: number): SheetLayout {
  return { isNarrow: width < NARROW };
}

type Rule = (params: CellClassParams<ScenarioRow, string>) => boolean;

function contextOf(params: CellClassParams<ScenarioRow, string>): SheetContext {
  return params.context as SheetContext;
}

function isInRange(params: CellClassParams<ScenarioRow, string>): boolean {
  const range = contextOf(params).range.current;
  const column = params.api.getAllDisplayedColumns().indexOf(params.column);
  return range !== null && rangeHolds(range, { row: params.rowIndex, column });
}

function commonRules(): Record<string, Rule> {
  return {
    [styles.inRange ?? '']: isInRange,
    [styles.today ?? '']: ({ data }) => data?.isToday === true,
    [styles.current ?? '']: (params) => params.data?.id === contextOf(params).currentId.current,
  };
}

function entryRules(id: string): CellClassRules<ScenarioRow> {
  return {
    ...commonRules(),
    [styles.faulty ?? '']: ({ data }) => Boolean(data?.entries[id]?.fault),
    [styles.idle ?? '']: ({ data }) => data?.entries[id]?.isIdle === true,
  };
}

function outputRules(): CellClassRules<ScenarioRow> {
  return { ...commonRules(), [styles.stale ?? '']: ({ data }) => data !== undefined && data.state !== 'fresh' };
}

function flagRules(): CellClassRules<ScenarioRow> {
  return { ...commonRules(), [styles.stale ?? '']: ({ data }) => data !== undefined && !data.isFlagFresh };
}

function baseDef(column: SheetColumn): ColDef<ScenarioRow, string> {
  return {
    colId: column.id,
    headerName: column.label,
    headerComponent: ColumnHead,
    headerComponentParams: { unit: column.unit },
    headerClass: column.isFigure ? styles.figureHead : undefined,
    cellClass: column.isFigure ? styles.figure : styles.words,
    width: column.width,
    columnGroupShow: column.isHeadline ? undefined : 'open',
    // What a cell shows may change while its value does not, such as the colour of its row.
    equals: () => false,
  };
}

function entryDef(column: SheetColumn): ColDef<ScenarioRow, string> {
  const { id, options } = column;
  return {
    ...baseDef(column),
    editable: true,
    valueGetter: ({ data }) => data?.entries[id]?.plainText ?? '',
    valueFormatter: ({ data }) => data?.entries[id]?.text ?? '',
    cellEditor: options ? ChoiceEditor : EntryEditor,
    cellEditorParams: options ? { options } : undefined,
    cellClassRules: entryRules(id),
  };
}

function outputDef(column: SheetColumn): ColDef<ScenarioRow, string> {
  return {
    ...baseDef(column),
    valueGetter: ({ data }) => data?.outputs[column.id]?.text ?? '',
    cellClassRules: outputRules(),
  };
}

function flagDef(column: SheetColumn, { isNarrow }: SheetLayout): ColDef<ScenarioRow, string> {
  return {
    ...baseDef(column),
    pinned: isNarrow ? undefined : 'right',
    valueGetter: ({ data }) => (data?.flag ? `${data.flag.title}: ${data.flag.figure}` : ''),
    cellRenderer: FlagCell,
    cellClassRules: flagRules(),
  };
}

function nameDef(column: SheetColumn, { isNarrow }: SheetLayout): ColDef<ScenarioRow, string> {
  return { ...entryDef(column), pinned: 'left', width: isNarrow ? 140 : column.width, cellRenderer: NameCell };
}

function defOf(column: SheetColumn, layout: SheetLayout): ColDef<ScenarioRow, string> {
  if (column.id === 'name') return nameDef(column, layout);
  if (column.kind === 'flag') return flagDef(column, layout);
  return column.kind === 'entry' ? entryDef(column) : outputDef(column);
}

/** Ids of groups must differ from those of columns. */
export function groupIdOf(group: SheetGroup | 'name'): string {
  return `group:${group}`;
}

/** The grid's definitions for the sheet's columns, group by group; the name stands before the groups. */
export function columnDefs(columns: readonly SheetColumn[], layout: SheetLayout): ColGroupDef<ScenarioRow>[] {
  const groups = new Map<SheetGroup | 'name', SheetColumn[]>();
  for (const column of columns) {
    const group = column.id === 'name' ? 'name' : column.group;
    groups.set(group, [...(groups.get(group) ?? []), column]);
  }
  return [...groups].map(([group, members]) => ({
    groupId: groupIdOf(group),
    headerName: group === 'name' ? '' : GROUP_LABELS[group],
    headerClass: styles.groupHead,
    children: members.map((column) => defOf(column, layout)),
  }));
}

/** True when the sheet itself has dealt with a key, so that the grid leaves it alone. */
export type KeyTaker = (params: SuppressKeyboardEventParams<ScenarioRow>) => boolean;

/** What all columns have in common. */
export function defaultDef(takeKey: KeyTaker): ColDef<ScenarioRow, string> {
  return {
    sortable: false,
    resizable: true,
    suppressMovable: true,
    suppressHeaderMenuButton: true,
    cellDataType: false,
    suppressKeyboardEvent: takeKey,
  };
}
