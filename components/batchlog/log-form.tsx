import { type FormEvent, useRef, useState } from 'react';
import { today } from '../../lib/io/today.ts';
import { columnField, type LogColumn } from '../../lib/plan/log-text/log-columns.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import {
  type DraftFaults,
  draftFigures,
  type LogDraft,
  newDraft,
  readDraft,
} from '../../lib/views/batch-log/log-draft.ts';
import { logUnit } from '../../lib/views/batch-log/log-figure.ts';
import { logEntryGesture } from '../../lib/views/batch-log/log-gestures.ts';
import { getPlanner } from '../state/planner.ts';
import { LogField } from './log-field.tsx';
import styles from './log-form.module.css';

interface Props {
  readonly plan: Plan;
  readonly start: LogDraft;
  readonly onDone: () => void;
  /** The form for the next entry, after one has gone into the log. */
  readonly onNext: (next: LogDraft) => void;
}

interface NamedChoice {
  readonly id: string;
  readonly name: string;
}

function titleOf({ kind, id }: LogDraft): string {
  const what = kind === 'batch' ? 'a batch' : 'a pressure-rise test';
  return id === null ? `Log ${what}` : `Change ${what}`;
}

interface ChoiceProps {
  readonly label: string;
  readonly fault: string | undefined;
  readonly value: string;
  readonly items: readonly NamedChoice[];
  readonly onPick: (id: string) => void;
}

function ChoiceOfName({ label, fault, value, items, onPick }: ChoiceProps) {
  return (
    <LogField label={label} fault={fault}>
      {(attributes) => (
        <select {...attributes} value={value} onChange={(event) => onPick(event.target.value)}>
          {items.map((item) => (
            <option key={item.id} value={item.id}>
              {item.name}
            </option>
          ))}
        </select>
      )}
    </LogField>
  );
}

interface FiguresProps {
  readonly plan: Plan;
  readonly draft: LogDraft;
  readonly faults: DraftFaults;
  readonly onType: (column: LogColumn, text: string) => void;
}

function FigureFields({ plan, draft, faults, onType }: FiguresProps) {
  return draftFigures(draft.kind).map((column) => (
    <LogField
      key={column}
      label={columnField(column).label}
      unit={logUnit(column, plan.site.unitSystem)}
      fault={faults[column]}
    >
      {(attributes) => (
        <input
          {...attributes}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          title={columnField(column).meaning}
          value={draft.texts[column]}
          onChange={(event) => onType(column, event.target.value)}
        />
      )}
    </LogField>
  ));
}

/** A short form for one batch or test, to be filled in by the chamber with a phone. */
export function LogForm({ plan, start, onDone, onNext }: Props) {
  const [draft, setDraft] = useState(start);
  const [faults, setFaults] = useState<DraftFaults>({});
  const form = useRef<HTMLFormElement>(null);
  const { kind, texts } = draft;
  const set = (column: LogColumn, text: string) => {
    setDraft({ ...draft, texts: { ...texts, [column]: text } });
    setFaults({ ...faults, [column]: undefined });
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const read = readDraft(plan, draft);
    if (!read.ok) {
      setFaults(read.error);
      requestAnimationFrame(() => form.current?.querySelector<HTMLElement>('[aria-invalid="true"]')?.focus());
      return;
    }
    const planner = getPlanner();
    const { command, said } = logEntryGesture(plan, read.value);
    planner.command(command, said);
    if (draft.id !== null) onDone();
    else onNext(newDraft({ ...plan, batchLog: [...plan.batchLog, read.value] }, kind, today()));
  };
  return (
    <form ref={form} className={styles.form} aria-labelledby="log-form-title" onSubmit={submit} noValidate>
      <h3 id="log-form-title">{titleOf(draft)}</h3>
      <div className={styles.fields}>
        <LogField label="Date" fault={faults.date}>
          {(attributes) => (
            <input
              {...attributes}
              type="date"
              value={texts.date}
              onChange={(event) => set('date', event.target.value)}
            />
          )}
        </LogField>
        <ChoiceOfName
          label="Chamber"
          fault={faults.chamber}
          value={texts.chamber}
          items={plan.chambers}
          onPick={(id) => set('chamber', id)}
        />
        {kind === 'batch' ? (
          <ChoiceOfName
            label="Product"
            fault={faults.product}
            value={texts.product}
            items={plan.products}
            onPick={(id) => set('product', id)}
          />
        ) : null}
        <FigureFields plan={plan} draft={draft} faults={faults} onType={set} />
        <LogField label="Note" fault={faults.note} wide>
          {(attributes) => (
            <input
              {...attributes}
              type="text"
              value={texts.note}
              onChange={(event) => set('note', event.target.value)}
            />
          )}
        </LogField>
      </div>
      <div className={styles.actions}>
        <button type="submit" className={styles.submit}>
          {draft.id === null ? 'Put it in the log' : 'Keep the change'}
        </button>
        <button type="button" onClick={onDone}>
          Close
        </button>
      </div>
    </form>
  );
}
