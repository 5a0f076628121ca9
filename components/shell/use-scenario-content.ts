import { useMemo, useState } from 'react';
import { computedIn } from '../../lib/io/engine-desk.ts';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { arrangedColumns, isVisible } from '../../lib/views/arrange-columns.ts';
import type { EntryColumn } from '../../lib/views/entry-column.ts';
import { columnSources, entryColumns, shownAs } from '../../lib/views/entry-columns.ts';
import { EMPTY_BOOK, nextRows, type RowSources, type ScenarioRow } from '../../lib/views/scenario-rows.ts';
import { type SheetColumn, sheetColumns } from '../../lib/views/sheet-columns.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import type { SheetState } from '../../lib/views/sheet-state.ts';
import { shownRows } from '../../lib/views/shown-rows.ts';
import { isSameLine, type SideLine, sideLines } from '../../lib/views/side-lines.ts';
import { usePlanner } from '../state/use-planner.ts';
import { useKeptSame } from '../ui/use-kept-same.ts';

export interface ScenarioContent {
  readonly state: SheetState;
  readonly entries: readonly EntryColumn[];
  /** All columns in their usual order. */
  readonly columns: readonly SheetColumn[];
  /** All scenarios in the order of the plan. */
  readonly rows: readonly ScenarioRow[];
  /** The scenarios on screen, filtered and sorted. */
  readonly shown: readonly ScenarioRow[];
  /** The lines of the sheet sideways; null upright. */
  readonly lines: readonly SideLine[] | null;
}

interface Columns {
  readonly sources: readonly unknown[];
  readonly entries: readonly EntryColumn[];
  readonly columns: readonly SheetColumn[];
}

function columnsOf(plan: Plan, sources: readonly unknown[]): Columns {
  const entries = entryColumns(plan);
  return { sources, entries, columns: sheetColumns(entries, OUTPUTS, shownAs(plan)) };
}

/** The columns of a plan, which stay the same objects while nothing they hang on has changed. */
function useColumns(plan: Plan): Columns {
  const [memory] = useState<{ kept: Columns | null }>(() => ({ kept: null }));
  const sources = columnSources(plan);
  const { kept } = memory;
  const isSame = kept?.sources.every((source, at) => source === sources[at]);
  memory.kept = kept && isSame ? kept : columnsOf(plan, sources);
  return memory.kept;
}

/** The rows, each the same object until something it hangs on has changed. */
function useRows(sources: RowSources): readonly ScenarioRow[] {
  const [memory] = useState(() => ({ book: EMPTY_BOOK }));
  memory.book = nextRows(memory.book, sources);
  return memory.book.rows;
}

const NO_LINES: readonly SideLine[] = [];

/** What the sheet of scenarios holds, made of the plan and of what the engine has said so far. */
export function useScenarioContent(): ScenarioContent {
  const sheet = usePlanner((state) => state.sheet);
  const desk = usePlanner((state) => state.desk);
  const look = usePlanner((state) => state.look);
  const state = useMemo(() => presentState(sheet), [sheet]);
  const { entries, columns } = useColumns(state.plan);
  const rows = useRows({
    state,
    columns: entries,
    outputs: OUTPUTS,
    shown: shownAs(state.plan),
    computed: (id) => computedIn(desk, id),
    isStopped: desk.isStopped,
  });
  const shown = useMemo(() => shownRows(rows, look), [rows, look]);
  const fresh = useMemo(() => {
    if (!look.isSideways) return NO_LINES;
    return sideLines(
      arrangedColumns(columns, look).filter((column) => isVisible(column, look)),
      shown,
    );
  }, [columns, look, shown]);
  const lines = useKeptSame(fresh, isSameLine);
  return { state, entries, columns, rows, shown, lines: look.isSideways ? lines : null };
}
