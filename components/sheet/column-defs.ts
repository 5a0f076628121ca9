import type { ColDef, ColGroupDef, SuppressKeyboardEventParams } from 'ag-grid-community';
import { isAlwaysShown, isHidden } from '../../lib/views/arrange-columns.ts';
import { GROUP_LABELS, type SheetColumn, type SheetGroup } from '../../lib/views/sheet-columns.ts';
import type { SheetLook } from '../../lib/views/sheet-look.ts';
import { cellDef } from './cell-def.ts';
import { ColumnHead } from './column-head.tsx';
import styles from './sheet.module.css';
import { isSideLine, type PickCell, type SheetLine } from './sheet-line.ts';

/** Width below which nothing but the name is kept in view [px]. */
const NARROW = 820;

export function isNarrowSheet(width: number): boolean {
  return width < NARROW;
}

function pickOf(column: SheetColumn): PickCell {
  return (line) => (line && !isSideLine(line) ? { row: line, column } : null);
}

/** The name stays in view to the left, and the flag to the right where there is room for it. */
function pinnedOf(column: SheetColumn, isNarrow: boolean): ColDef['pinned'] {
  if (column.id === 'name') return 'left';
  return column.kind === 'flag' && !isNarrow ? 'right' : undefined;
}

function defOf(column: SheetColumn, look: SheetLook, isNarrow: boolean): ColDef<SheetLine, string> {
  const isName = column.id === 'name';
  return {
    ...cellDef(pickOf(column), column),
    colId: column.id,
    headerName: column.label,
    headerComponent: ColumnHead,
    headerComponentParams: {
      unit: column.unit,
      sort: look.sort?.columnId === column.id ? look.sort.way : null,
      isFiltered: look.filters[column.id] !== undefined,
    },
    headerClass: column.isFigure ? styles.figureHead : undefined,
    width: isName && isNarrow ? 140 : column.width,
    columnGroupShow: isAlwaysShown(column, look) ? undefined : 'open',
    pinned: pinnedOf(column, isNarrow),
    suppressMovable: isName || column.kind === 'flag',
    // A finger that drags scrolls the sheet; rows are moved by the buttons above it.
    rowDrag: isName && look.sort === null && !isNarrow,
  };
}

/** Ids of groups must differ from those of columns. */
export function groupIdOf(group: SheetGroup | 'name'): string {
  return `group:${group}`;
}

/** The grid's definitions for the sheet's columns, group by group; the name stands before the groups. */
export function columnDefs(
  columns: readonly SheetColumn[],
  look: SheetLook,
  isNarrow: boolean,
): ColGroupDef<SheetLine>[] {
  const groups = new Map<SheetGroup | 'name', SheetColumn[]>();
  for (const column of columns.filter((one) => !isHidden(one, look))) {
    const group = column.id === 'name' ? 'name' : column.group;
    groups.set(group, [...(groups.get(group) ?? []), column]);
  }
  return [...groups].map(([group, members]) => ({
    groupId: groupIdOf(group),
    headerName: group === 'name' ? '' : GROUP_LABELS[group],
    headerClass: styles.groupHead,
    marryChildren: true,
    openByDefault: look.isWhole,
    children: members.map((column) => defOf(column, look, isNarrow)),
  }));
}

/** True when the sheet itself has dealt with a key, so that the grid leaves it alone. */
export type KeyTaker = (params: SuppressKeyboardEventParams<SheetLine>) => boolean;

/** What all columns have in common. */
export function defaultDef(takeKey: KeyTaker): ColDef<SheetLine, string> {
  return {
    sortable: false,
    resizable: true,
    suppressHeaderMenuButton: true,
    cellDataType: false,
    suppressKeyboardEvent: takeKey,
  };
}
