import type { ColDef } from 'ag-grid-community';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import { cellDef, RANGE_RULES } from './cell-def.ts';
import { LabelCell } from './label-cell.tsx';
import styles from './sheet.module.css';
import { isSideLine, type PickCell, type SheetLine } from './sheet-line.ts';
import { SideHead } from './side-head.tsx';

/** Width of a scenario's column, and of the labels on wide and narrow screens [px]. */
const SCENARIO_WIDTH = 150;
const LABEL_WIDTH = 230;
const NARROW_LABEL_WIDTH = 150;

/** Id of the column of labels. */
const LABELS = 'labels';

function pickOf(id: string, at: number): PickCell {
  return (line) => {
    if (!line || !isSideLine(line) || !line.column) return null;
    const row = line.rows[at];
    return row?.id === id ? { row, column: line.column } : null;
  };
}

function labelDef(isNarrow: boolean): ColDef<SheetLine, string> {
  return {
    colId: LABELS,
    headerName: 'Scenario',
    width: isNarrow ? NARROW_LABEL_WIDTH : LABEL_WIDTH,
    pinned: 'left',
    suppressMovable: true,
    valueGetter: ({ data }) => (data && isSideLine(data) ? data.label : ''),
    cellRenderer: LabelCell,
    cellClassRules: RANGE_RULES,
    equals: () => false,
  };
}

/** The grid's definitions for the sheet sideways: labels, and a column for each scenario. */
export function sideDefs(rows: readonly ScenarioRow[], isNarrow: boolean): ColDef<SheetLine, string>[] {
  return [
    labelDef(isNarrow),
    ...rows.map(({ id, name, place, isToday }, at) => ({
      ...cellDef(pickOf(id, at), null),
      colId: id,
      headerName: name,
      headerComponent: SideHead,
      headerComponentParams: { place, isToday },
      headerClass: styles.sideHead,
      width: SCENARIO_WIDTH,
      suppressMovable: true,
    })),
  ];
}
