import type { ColDef, ColGroupDef } from 'ag-grid-community';
import { useMemo } from 'react';
import { arrangedColumns } from '../../lib/views/arrange-columns.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import type { SheetColumn } from '../../lib/views/sheet-columns.ts';
import { leavingStep, sheetAction } from '../../lib/views/sheet-keys.ts';
import type { SheetLook } from '../../lib/views/sheet-look.ts';
import { columnDefs, defaultDef, isNarrowSheet } from './column-defs.ts';
import type { SheetContext } from './sheet-context.ts';
import type { SheetLine } from './sheet-line.ts';
import { sideDefs } from './side-defs.ts';
import type { SheetActions } from './use-sheet-actions.ts';

export interface SheetColumnDefs {
  readonly defs: (ColDef<SheetLine> | ColGroupDef<SheetLine>)[];
  readonly common: ColDef<SheetLine, string>;
}

interface Drawn {
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly ScenarioRow[];
  readonly look: SheetLook;
  readonly width: number;
  readonly actions: SheetActions;
}

/** What of the rows the heads sideways show, as text; empty upright. */
function headsText(rows: readonly ScenarioRow[], { isSideways }: SheetLook): string {
  return isSideways ? JSON.stringify(rows.map(({ id, name, place, isToday }) => ({ id, name, place, isToday }))) : '[]';
}

function commonDef(actions: SheetActions): ColDef<SheetLine, string> {
  return defaultDef(({ event, editing, api, context }) => {
    if (event.type !== 'keydown') return false;
    const step = editing ? leavingStep(event, (context as SheetContext).isTypedOver.current) : null;
    const action = editing ? null : sheetAction(event);
    if (!step && !action) return false;
    event.preventDefault();
    if (step) {
      api.stopEditing();
      actions.step(step);
    }
    if (action) actions.act(action);
    return true;
  });
}

/** Definitions that stay the same objects until what they say changes, so that the grid keeps its columns. */
export function useSheetColumns({ columns, rows, look, width, actions }: Drawn): SheetColumnDefs {
  const heads = headsText(rows, look);
  const isNarrow = isNarrowSheet(width);
  const defs = useMemo(() => {
    if (look.isSideways) return sideDefs(JSON.parse(heads) as ScenarioRow[], isNarrow);
    return columnDefs(arrangedColumns(columns, look), look, isNarrow);
  }, [columns, heads, look, isNarrow]);
  const common = useMemo(() => commonDef(actions), [actions]);
  return { defs, common };
}
