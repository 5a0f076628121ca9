import type {
  CellClassParams,
  CellClassRules,
  CellEditorSelectorResult,
  ColDef,
  ICellEditorParams,
  ICellRendererParams,
} from 'ag-grid-community';
import { boundsOf, rangeHolds } from '../../lib/views/cell-range.ts';
import type { SheetColumn } from '../../lib/views/sheet-columns.ts';
import { shownCell } from '../../lib/views/shown-rows.ts';
import { ChoiceEditor } from './choice-editor.tsx';
import { EntryEditor } from './entry-editor.tsx';
import { FlagCell } from './flag-cell.tsx';
import { NameCell } from './name-cell.tsx';
import styles from './sheet.module.css';
import type { SheetContext } from './sheet-context.ts';
import type { PickCell, PickedCell, SheetLine } from './sheet-line.ts';

type ClassParams = CellClassParams<SheetLine, string>;

function contextOf(params: { readonly context?: unknown }): SheetContext {
  return params.context as SheetContext;
}

function isInRange(params: ClassParams): boolean {
  const { range, placeOf } = contextOf(params);
  const place = range.current && placeOf(params.rowIndex, params.column.getColId());
  return Boolean(range.current && place && rangeHolds(range.current, place));
}

/** The bottom right corner of the range, where it is drawn out by the mouse. */
function isCorner(params: ClassParams): boolean {
  const { range, placeOf } = contextOf(params);
  const place = range.current && placeOf(params.rowIndex, params.column.getColId());
  if (!range.current || !place) return false;
  const { bottom, right } = boundsOf(range.current);
  return place.row === bottom && place.column === right;
}

function isStale({ row, column }: PickedCell): boolean {
  if (column.kind === 'entry') return false;
  return column.kind === 'flag' ? !row.isFlagFresh : row.state !== 'fresh';
}

/** Signs of the range, which labels and headings bear as well. */
export const RANGE_RULES: CellClassRules<SheetLine> = {
  [styles.inRange ?? '']: isInRange,
  [styles.corner ?? '']: isCorner,
};

function rulesFor(pick: PickCell): CellClassRules<SheetLine> {
  const when = (test: (cell: PickedCell, params: ClassParams) => boolean) => (params: ClassParams) => {
    const cell = pick(params.data);
    return cell !== null && test(cell, params);
  };
  return {
    ...RANGE_RULES,
    [styles.figure ?? '']: when(({ column }) => column.isFigure),
    [styles.words ?? '']: when(({ column }) => !column.isFigure),
    [styles.choiceCell ?? '']: when(({ column }) => column.options !== null),
    [styles.today ?? '']: when(({ row }) => row.isToday),
    [styles.current ?? '']: when(({ row }, params) => row.id === contextOf(params).currentId.current),
    [styles.faulty ?? '']: when(({ row, column }) => Boolean(row.entries[column.id]?.fault)),
    [styles.idle ?? '']: when(({ row, column }) => row.entries[column.id]?.isIdle === true),
    [styles.stale ?? '']: when(isStale),
    [styles.noted ?? '']: when(({ row, column }) => row.notes[column.id] !== undefined),
  };
}

function shownText({ row, column }: PickedCell): string {
  return shownCell(row, column.id).text;
}

/** What editing starts from. */
function plainText(cell: PickedCell): string {
  return cell.row.entries[cell.column.id]?.plainText ?? shownText(cell);
}

function editorFor(pick: PickCell) {
  return ({ data }: ICellEditorParams<SheetLine, string>): CellEditorSelectorResult | undefined => {
    const cell = pick(data);
    if (!cell) return undefined;
    const { row, column } = cell;
    const params = { scenarioId: row.id, columnId: column.id, label: `${column.label}, ${row.name}` };
    return column.options
      ? { component: ChoiceEditor, params: { ...params, options: column.options } }
      : { component: EntryEditor, params };
  };
}

function rendererFor(pick: PickCell) {
  return ({ data }: ICellRendererParams<SheetLine, string>) => {
    const cell = pick(data);
    if (cell?.column.kind === 'flag') return { component: FlagCell, params: { row: cell.row } };
    return cell?.column.id === 'name' ? { component: NameCell, params: { row: cell.row } } : undefined;
  };
}

/** How the cells of one grid column are shown and changed, whichever way round the sheet is. @param own set when all of them are of one column of the sheet */
export function cellDef(pick: PickCell, own: SheetColumn | null): ColDef<SheetLine, string> {
  const textOf = (line: SheetLine | undefined, read: (cell: PickedCell) => string) => {
    const cell = pick(line);
    return cell ? read(cell) : '';
  };
  const isPlain = own !== null && own.kind !== 'flag' && own.id !== 'name';
  return {
    editable: ({ data }) => pick(data)?.column.kind === 'entry',
    valueGetter: ({ data }) => textOf(data, plainText),
    valueFormatter: ({ data }) => textOf(data, shownText),
    cellEditor: EntryEditor,
    cellEditorSelector: editorFor(pick),
    // A column without drawn cells is told so at once, which spares a question for each of its cells.
    cellRendererSelector: isPlain ? undefined : rendererFor(pick),
    cellClassRules: rulesFor(pick),
    // What a cell shows may change while its value does not, such as the colour of its row.
    equals: () => false,
  };
}
