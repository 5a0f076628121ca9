import { lazy, Suspense, useCallback, useMemo, useState } from 'react';
import { applyEntries } from '../../lib/views/apply-entries.ts';
import { cellNote } from '../../lib/views/cell-note.ts';
import { likelyEntries } from '../../lib/views/likely-entries.ts';
import { previewEntry } from '../../lib/views/preview-entry.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import { CellNoteLine } from '../sheet/cell-note-line.tsx';
import { FirstSheet } from '../sheet/first-sheet.tsx';
import { LookingLine } from '../sheet/looking-line.tsx';
import type { NamedCell } from '../sheet/named-cell.ts';
import { NoteDialog } from '../sheet/note-dialog.tsx';
import type { TypedCell } from '../sheet/sheet-context.ts';
import { SheetMenu } from '../sheet/sheet-menu.tsx';
import type { SheetMenuTarget } from '../sheet/sheet-menu-target.ts';
import { SheetToolbar } from '../sheet/sheet-toolbar.tsx';
import { useLatest } from '../sheet/use-latest.ts';
import { getPlanner } from '../state/planner.ts';
import { usePlanner } from '../state/use-planner.ts';
import { useIdle } from '../ui/use-idle.ts';
import styles from './scenarios-panel.module.css';
import type { ScenarioContent } from './use-scenario-content.ts';

/** What makes the sheet one to work at is more script than all the rest, so it is fetched once the figures can be read. */
const ScenarioSheet = lazy(async () => ({ default: (await import('../sheet/scenario-sheet.tsx')).ScenarioSheet }));

interface Props {
  readonly content: ScenarioContent;
  /** Asked how the figure of a cell was worked out; it must stay the same function. */
  readonly onExplain: (cell: NamedCell) => void;
  readonly canExplain: (cell: NamedCell) => boolean;
}

/** The sheet with its tools above it, and under it the line that speaks of the cell in focus. */
export function SheetPart({ content, onExplain, canExplain }: Props) {
  const { state, entries, columns, rows, shown, lines } = content;
  const currentId = usePlanner((planner) => planner.currentId);
  const look = usePlanner((planner) => planner.look);
  const [focused, setFocused] = useState<NamedCell | null>(null);
  const [typed, setTyped] = useState<TypedCell | null>(null);
  const [noted, setNoted] = useState<NamedCell | null>(null);
  const [menu, setMenu] = useState<SheetMenuTarget | null>(null);
  const columnsNow = useLatest(entries);
  const rowsNow = useLatest(rows);
  const onExpected = useCallback(
    (cells: readonly TypedCell[], isGuess = false) => {
      const planner = getPlanner();
      const state = presentState(planner.getState().sheet);
      const planWith = (cell: TypedCell) => applyEntries(state, [cell], columnsNow.current).state.plan;
      planner.foresee(
        cells.map((cell) => ({ plan: planWith(cell), scenarioId: cell.scenarioId })),
        isGuess,
      );
    },
    [columnsNow],
  );
  const onFocus = useCallback(
    (cell: NamedCell | null) => {
      setFocused(cell);
      onExpected(cell ? likelyEntries(rowsNow.current, columnsNow.current, cell) : [], true);
    },
    [onExpected, rowsNow, columnsNow],
  );
  const onTyping = useCallback(
    (cell: TypedCell | null) => {
      setTyped(cell);
      getPlanner().typing(cell);
      onExpected(cell ? [cell] : []);
    },
    [onExpected],
  );
  const hearers = useMemo(
    () => ({ onFocus, onTyping, onExpected, onExplain, onNote: setNoted, onMenu: setMenu }),
    [onFocus, onTyping, onExpected, onExplain],
  );
  const isIdle = useIdle();
  const first = <FirstSheet rows={shown} columns={columns} look={look} />;
  const notedCell = noted ? cellNote(rows, columns, noted) : null;
  const notedRow = rows.find((row) => row.id === noted?.scenarioId);
  return (
    <section className={styles.sheetPart} aria-labelledby="sheet-title">
      <div className={styles.sheetHead}>
        <h2 id="sheet-title">Scenarios</h2>
        <SheetToolbar columns={columns} />
      </div>
      <LookingLine columns={columns} shown={shown.length} all={rows.length} />
      {isIdle ? (
        <Suspense fallback={first}>
          <ScenarioSheet {...{ rows: shown, lines, columns, entries, currentId, look, hearers }} />
        </Suspense>
      ) : (
        first
      )}
      <CellNoteLine
        note={cellNote(rows, columns, focused)}
        preview={typed ? previewEntry(state, entries, typed) : null}
        onExplain={focused && canExplain(focused) ? () => onExplain(focused) : null}
      />
      {menu ? <SheetMenu target={menu} columns={columns} onNote={setNoted} onClose={() => setMenu(null)} /> : null}
      {noted && notedCell ? (
        <NoteDialog
          cell={noted}
          title={`${notedCell.label}, ${notedRow?.name ?? ''}`}
          note={notedCell.note}
          onClose={() => setNoted(null)}
        />
      ) : null}
    </section>
  );
}
