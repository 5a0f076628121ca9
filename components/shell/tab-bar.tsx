import { type KeyboardEvent, useMemo, useRef } from 'react';
import { presentState } from '../../lib/views/sheet-history.ts';
import { waitingParts, waitingWords } from '../../lib/views/waiting-parts.ts';
import { OwnPlanButton } from '../own/own-plan-button.tsx';
import { usePlanner } from '../state/use-planner.ts';
import styles from './tab-bar.module.css';
import { TABS, type Tab } from './tabs.ts';
import { openTab } from './use-open-tab.ts';

/** Where each key leads from a place on the bar; the bar is a ring. */
const STEPS: Readonly<Record<string, (place: number, last: number) => number>> = {
  ArrowRight: (place, last) => (place === last ? 0 : place + 1),
  ArrowLeft: (place, last) => (place === 0 ? last : place - 1),
  Home: () => 0,
  End: (_, last) => last,
};

/** Id of a tab's button, by which its panel is named. */
export function tabElementId(tab: Tab): string {
  return `tab-${tab.id}`;
}

/** Id of the panel a tab opens. */
export function panelElementId(tab: Tab): string {
  return `panel-${tab.id}`;
}

/** A sign on the tab of a part in which entries wait to be mended, so that they are found again. */
function WaitingMark({ count }: { readonly count: number }) {
  const words = waitingWords(count);
  return (
    <span className={styles.mark} title={words}>
      <span aria-hidden="true">!</span>
      <span className="visually-hidden">({words})</span>
    </span>
  );
}

/** The bar of the plan's parts, and the way to a plan of one's own. Arrow keys, Home and End go along it; the part in focus is the one that is open. */
export function TabBar({ open }: { readonly open: Tab }) {
  const bar = useRef<HTMLDivElement>(null);
  const sheet = usePlanner((state) => state.sheet);
  const waiting = useMemo(() => waitingParts(presentState(sheet)), [sheet]);
  const onKeyDown = (event: KeyboardEvent) => {
    const step = STEPS[event.key];
    // From the tab in focus: the one that is open follows the address, which quick keys are ahead of.
    const from = TABS.findIndex((tab) => tabElementId(tab) === event.currentTarget.id);
    const target = step && TABS[step(from, TABS.length - 1)];
    if (!target || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    openTab(target.id);
    bar.current?.querySelector<HTMLElement>(`#${tabElementId(target)}`)?.focus();
  };
  return (
    <div className={styles.row}>
      <div ref={bar} role="tablist" aria-label="Parts of the plan" className={styles.bar}>
        {TABS.map((tab) => (
          <button
            key={tab.id}
            id={tabElementId(tab)}
            type="button"
            role="tab"
            className={styles.tab}
            aria-selected={tab === open}
            aria-controls={tab === open ? panelElementId(tab) : undefined}
            tabIndex={tab === open ? 0 : -1}
            onKeyDown={onKeyDown}
            onClick={() => openTab(tab.id)}
          >
            {tab.label}
            {waiting.has(tab.id) ? <WaitingMark count={waiting.get(tab.id) ?? 0} /> : null}
          </button>
        ))}
      </div>
      <OwnPlanButton onMade={() => openTab('scenarios')} />
    </div>
  );
}
