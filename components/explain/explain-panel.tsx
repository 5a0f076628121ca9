'use client';

import { type KeyboardEvent, useEffect, useId, useRef, useState } from 'react';
import type { DeskSnapshot } from '../../lib/io/engine-desk.ts';
import type { OutputField } from '../../lib/model/outputs/output-field.ts';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import type { WorkContext } from '../../lib/model/workings/working.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { bottleneckOutput } from '../../lib/views/bottleneck-working.ts';
import { shownAs } from '../../lib/views/entry-columns.ts';
import { explainView } from '../../lib/views/explain-view.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import { FLAG_COLUMN_ID, FLAG_WORDS } from '../../lib/views/sheet-columns.ts';
import type { NamedCell } from '../sheet/named-cell.ts';
import { ExplainBody } from './explain-body.tsx';
import styles from './explain-panel.module.css';

interface Props {
  readonly cell: NamedCell;
  readonly plan: Plan;
  readonly desk: DeskSnapshot;
  readonly rows: readonly ScenarioRow[];
  readonly onClose: () => void;
}

/** What the cell shows, as something that can be taken apart; nothing while a flag is not of the plan as it stands. */
function outputOf({ cell, desk }: Props): OutputField | undefined {
  if (cell.columnId !== FLAG_COLUMN_ID) return OUTPUTS.find((candidate) => candidate.id === cell.columnId);
  const bottleneck = desk.computed.get(cell.scenarioId)?.bottleneck;
  return bottleneck ? bottleneckOutput(bottleneck) : undefined;
}

/** What the figures of a row are explained from; null while they are not of the plan as it stands. */
function contextOf({ cell, plan, desk }: Props): WorkContext | null {
  const scenario = plan.scenarios.find((candidate) => candidate.id === cell.scenarioId);
  const resultOf = (id: string | undefined) => {
    const outcome = id === undefined ? null : desk.computed.get(id)?.outcome;
    return outcome?.kind === 'computed' ? outcome.result : null;
  };
  const result = resultOf(cell.scenarioId);
  const today = resultOf(plan.scenarios[0]?.id);
  return scenario && result && today ? { plan, scenario, result, today } : null;
}

function Crumbs({ crumbs, onGo }: { readonly crumbs: readonly string[]; readonly onGo: (depth: number) => void }) {
  return (
    <ol className={styles.crumbs} aria-label="Way from the sheet to here">
      {crumbs.slice(0, -1).map((crumb, depth) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a crumb is its place on the way
        <li key={depth}>
          <button type="button" onClick={() => onGo(depth)}>
            {crumb}
          </button>
        </li>
      ))}
    </ol>
  );
}

/** A panel at the side that takes a figure of the sheet apart, level by level, down to the plan's own entries. */
export function ExplainPanel(props: Props) {
  const { cell, plan, rows, onClose } = props;
  const [trail, setTrail] = useState<readonly number[]>([]);
  const dialog = useRef<HTMLDialogElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const titleId = useId();
  const output = outputOf(props);
  const context = contextOf(props);
  const shown = shownAs(plan);
  const view = output && context ? explainView(output, context, trail, shown) : null;
  useEffect(() => {
    const element = dialog.current;
    const opener = document.activeElement;
    element?.showModal();
    return () => {
      element?.close();
      // The panel has left the page by now, so the browser gives no focus back by itself.
      if (opener instanceof HTMLElement) opener.focus();
    };
  }, []);
  useEffect(() => {
    // Read the new level from its top, by eye and by ear.
    if (trail.length >= 0) heading.current?.focus();
  }, [trail]);
  function goUp(event: KeyboardEvent) {
    if (event.key !== 'Backspace' || trail.length === 0) return;
    event.preventDefault();
    setTrail(trail.slice(0, -1));
  }
  return (
    <dialog ref={dialog} className={styles.panel} aria-labelledby={titleId} onCancel={onClose} onKeyDown={goUp}>
      <div className={styles.top}>
        <p className={styles.row}>{rows.find((row) => row.id === cell.scenarioId)?.name}</p>
        <button type="button" onClick={onClose}>
          Close
        </button>
      </div>
      {view && view.crumbs.length > 1 ? (
        <Crumbs crumbs={view.crumbs} onGo={(depth) => setTrail(trail.slice(0, depth))} />
      ) : null}
      <h2 id={titleId} ref={heading} tabIndex={-1} className={styles.title}>
        {view?.crumbs.at(-1) ?? output?.label ?? FLAG_WORDS.label} <span className={styles.value}>{view?.value}</span>
      </h2>
      {view ? (
        <ExplainBody page={view.page} onOpen={(place) => setTrail([...trail, place])} />
      ) : (
        <p>This row is being worked out. Its numbers can be taken apart as soon as they are there.</p>
      )}
      <p className={styles.keys}>Tab and Enter go down a level, Backspace goes up, Esc closes.</p>
    </dialog>
  );
}
