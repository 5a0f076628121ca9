import { type RefObject, useCallback } from 'react';
import type { EntryColumn } from '../../lib/views/entry-column.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import type { ShownSheet } from '../../lib/views/shown-sheet.ts';
import { type SideLine, sideLabels } from '../../lib/views/side-lines.ts';
import type { GridRef } from './use-sheet-range.ts';

interface Shown {
  readonly grid: GridRef;
  readonly rows: RefObject<readonly ScenarioRow[]>;
  readonly entries: RefObject<readonly EntryColumn[]>;
  /** The lines of the sheet sideways; null upright. */
  readonly lines: RefObject<readonly SideLine[] | null>;
}

/** The sheet as it is on screen at the time of asking. */
export function useShownSheet({ grid, rows, entries, lines }: Shown): () => ShownSheet {
  return useCallback(() => {
    const upright = () => grid.current?.getAllDisplayedColumns().map((column) => column.getColId()) ?? [];
    return {
      rows: rows.current,
      columnIds: lines.current?.map((line) => line.id) ?? upright(),
      entryIds: new Set(entries.current.map((column) => column.id)),
      isSideways: lines.current !== null,
      labels: lines.current ? sideLabels(lines.current) : new Map(),
    };
  }, [grid, rows, entries, lines]);
}
