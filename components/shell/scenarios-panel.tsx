'use client';

import { useCallback, useDeferredValue, useMemo, useState } from 'react';
import { computedIn } from '../../lib/io/engine-desk.ts';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import { cellNote } from '../../lib/views/cell-note.ts';
import { entryColumns, shownAs } from '../../lib/views/entry-columns.ts';
import { isSameData } from '../../lib/views/keep-same.ts';
import { previewEntry } from '../../lib/views/preview-entry.ts';
import { scenarioRows } from '../../lib/views/scenario-rows.ts';
import { sheetColumns } from '../../lib/views/sheet-columns.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import { EvidencePanel } from '../evidence/evidence-panel.tsx';
import { ExplainPanel } from '../explain/explain-panel.tsx';
import { useExplained } from '../explain/use-explained.ts';
import { CellNoteLine } from '../sheet/cell-note-line.tsx';
import type { NamedCell } from '../sheet/named-cell.ts';
import { ScenarioSheet } from '../sheet/scenario-sheet.tsx';
import type { TypedCell } from '../sheet/sheet-context.ts';
import { SheetToolbar } from '../sheet/sheet-toolbar.tsx';
import { getPlanner } from '../state/planner.ts';
import { usePlanner } from '../state/use-planner.ts';
import { useKeptSame } from '../ui/use-kept-same.ts';
import { CautionsBlock } from './cautions-block.tsx';
import styles from './scenarios-panel.module.css';

/** The sheet of scenarios, and under it the evidence for the one that is chosen. */
export default function ScenariosPanel() {
  const sheet = usePlanner((state) => state.sheet);
  const desk = usePlanner((state) => state.desk);
  const currentId = usePlanner((state) => state.currentId);
  const selectedIds = usePlanner((state) => state.selectedIds);
  const [focused, setFocused] = useState<NamedCell | null>(null);
  const [typed, setTyped] = useState<TypedCell | null>(null);
  const [isWhole, setWhole] = useState(false);
  const explained = useExplained();
  const onTyping = useCallback((cell: TypedCell | null) => {
    setTyped(cell);
    getPlanner().typing(cell);
  }, []);

  const state = useMemo(() => presentState(sheet), [sheet]);
  const { plan } = state;
  const entries = useMemo(() => entryColumns(plan), [plan]);
  const columns = useMemo(() => sheetColumns(entries, OUTPUTS, shownAs(plan)), [entries, plan]);
  const freshRows = useMemo(
    () =>
      scenarioRows({
        state,
        columns: entries,
        outputs: OUTPUTS,
        shown: shownAs(plan),
        computed: (id) => computedIn(desk, id),
      }),
    [state, entries, plan, desk],
  );
  const rows = useKeptSame(freshRows, isSameData);
  // The charts follow a moment later, so that moving about the sheet and typing never wait for them.
  const shown = useMemo(
    () => ({ plan, rows, desk, currentId, selectedIds }),
    [plan, rows, desk, currentId, selectedIds],
  );
  const evidence = useDeferredValue(shown);
  return (
    <div className={styles.parts}>
      <section className={styles.sheetPart} aria-labelledby="sheet-title">
        <div className={styles.sheetHead}>
          <h2 id="sheet-title">Scenarios</h2>
          <SheetToolbar isWhole={isWhole} onWhole={setWhole} />
        </div>
        <ScenarioSheet
          rows={rows}
          columns={columns}
          entries={entries}
          currentId={currentId}
          isWhole={isWhole}
          onFocus={setFocused}
          onTyping={onTyping}
          onExplain={explained.open}
        />
        <CellNoteLine
          note={cellNote(rows, columns, focused)}
          preview={typed ? previewEntry(state, entries, typed) : null}
          onExplain={focused && explained.canOpen(focused) ? () => explained.open(focused) : null}
        />
      </section>
      {explained.cell ? (
        <ExplainPanel cell={explained.cell} plan={plan} desk={desk} rows={rows} onClose={explained.close} />
      ) : null}
      <EvidencePanel {...evidence} />
      <CautionsBlock rows={rows} />
    </div>
  );
}
