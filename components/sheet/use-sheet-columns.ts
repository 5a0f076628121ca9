import type { ColDef, ColGroupDef } from 'ag-grid-community';
import { useMemo } from 'react';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import type { SheetColumn } from '../../lib/views/sheet-columns.ts';
import { type SheetAction, sheetAction } from '../../lib/views/sheet-keys.ts';
import { columnDefs, defaultDef, layoutFor } from './column-defs.ts';

export interface SheetColumnDefs {
  readonly defs: ColGroupDef<ScenarioRow>[];
  readonly common: ColDef<ScenarioRow, string>;
}

/** Definitions that stay the same objects until what they say changes, so that the grid keeps its columns. */
export function useSheetColumns(
  columns: readonly SheetColumn[],
  width: number,
  act: (action: SheetAction) => void,
): SheetColumnDefs {
  const text = JSON.stringify(columns);
  const { isNarrow } = layoutFor(width);
  const defs = useMemo(() => columnDefs(JSON.parse(text) as SheetColumn[], { isNarrow }), [text, isNarrow]);
  const common = useMemo(
    () =>
      defaultDef(({ event, editing }) => {
        const action = editing || event.type !== 'keydown' ? null : sheetAction(event);
        if (!action) return false;
        event.preventDefault();
        act(action);
        return true;
      }),
    [act],
  );
  return { defs, common };
}
