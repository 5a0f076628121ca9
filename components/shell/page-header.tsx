import { memo, useRef, useState } from 'react';
import { applyTheme, startTheme } from '../../lib/io/theme-choice.ts';
import type { UnitSystem } from '../../lib/units/dimension.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import { PlansButton } from '../plans/plans-button.tsx';
import { ShareButton } from '../plans/share-button.tsx';
import { getPlanner } from '../state/planner.ts';
import type { Keeping } from '../state/planner-state.ts';
import { usePlanner } from '../state/use-planner.ts';
import { ChoiceBar } from '../ui/choice-bar.tsx';
import { SignButton } from '../ui/sign-button.tsx';
import styles from './page-header.module.css';
import { RimeMark } from './rime-mark.tsx';

const SYSTEMS = [
  { value: 'us', label: 'US' },
  { value: 'si', label: 'SI' },
] as const;

const KEEPING_WORDS: Readonly<Record<Keeping, string>> = {
  starting: '',
  writing: 'keeping …',
  kept: 'kept in this browser',
  loose: 'not kept: save it as a file',
};

function PlanName({ name }: { readonly name: string }) {
  const planner = getPlanner();
  const commit = (text: string) => {
    const next = text.trim();
    if (next !== name) {
      planner.command({ kind: 'setValues', changes: [{ path: 'name', value: next }] }, `The plan is called ${next}.`);
    }
  };
  return (
    <input
      key={name}
      className={styles.planName}
      aria-label="Name of the plan"
      defaultValue={name}
      onBlur={(event) => {
        commit(event.target.value);
        // A name that was refused gives way to the one the plan has.
        event.target.value = presentState(planner.getState().sheet).plan.name;
      }}
      onKeyDown={(event) => {
        if (event.key === 'Enter') event.currentTarget.blur();
      }}
    />
  );
}

function OpenButton() {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <SignButton sign="open" label="Open" wordy="roomy" onPress={() => input.current?.click()} />
      <input
        ref={input}
        type="file"
        hidden
        accept=".json,application/json"
        data-testid="open-file"
        onChange={(event) => {
          const file = event.target.files?.[0];
          // The same file may be chosen again after it was mended.
          event.target.value = '';
          if (file) void getPlanner().openFile(file);
        }}
      />
    </>
  );
}

function ThemeButton() {
  const [theme, setTheme] = useState(startTheme);
  const other = theme === 'dark' ? 'light' : 'dark';
  return (
    <SignButton
      sign={other === 'dark' ? 'night' : 'day'}
      label={other === 'dark' ? 'Dark colours' : 'Light colours'}
      onPress={() => {
        applyTheme(other);
        setTheme(other);
      }}
    />
  );
}

/** The head of the page: what is open, and what can be done with it as a whole. */
export const PageHeader = memo(function PageHeader() {
  const planner = getPlanner();
  const sheet = usePlanner((state) => state.sheet);
  const keeping = usePlanner((state) => state.keeping);
  const { plan } = presentState(sheet);
  const { past, future } = sheet.history;
  const setSystem = (value: UnitSystem) =>
    planner.command(
      { kind: 'setValues', changes: [{ path: 'site.unitSystem', value }] },
      value === 'us' ? 'Figures are in US units.' : 'Figures are in SI units.',
    );
  return (
    <header className={styles.header}>
      <div className={styles.title}>
        <RimeMark />
        <h1 className={styles.product}>Rimeplan</h1>
        <div className={styles.names}>
          <PlanName name={plan.name} />
          <p className={styles.shop}>
            {plan.site.shopName} · <span data-testid="keeping">{KEEPING_WORDS[keeping]}</span>
          </p>
        </div>
      </div>
      <div className={styles.tools}>
        <SignButton
          sign="undo"
          label={past.length > 0 ? `Undo: ${past.at(-1)?.label}` : 'Undo'}
          keys="Control+Z"
          disabled={past.length === 0}
          onPress={planner.undo}
        />
        <SignButton
          sign="redo"
          label={future.length > 0 ? `Redo: ${future[0]?.label}` : 'Redo'}
          keys="Control+Y"
          disabled={future.length === 0}
          onPress={planner.redo}
        />
        <PlansButton />
        <OpenButton />
        <SignButton sign="save" label="Save" wordy="roomy" onPress={planner.saveFile} />
        <ShareButton />
        <ChoiceBar label="Units" options={SYSTEMS} value={plan.site.unitSystem} onChange={setSystem} />
        <ThemeButton />
      </div>
    </header>
  );
});
