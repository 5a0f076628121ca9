import { type ComponentType, type LazyExoticComponent, lazy } from 'react';

/** One part of the plan that fills the page's main area; it is fetched when it is first opened. */
export interface Tab {
  /** Stands in the address after #. */
  readonly id: string;
  readonly label: string;
  readonly Panel: LazyExoticComponent<ComponentType>;
}

/** The parts of the page in the order of the bar; the first is open at the start. */
export const TABS: readonly Tab[] = [
  { id: 'scenarios', label: 'Scenarios', Panel: lazy(() => import('./scenarios-panel.tsx')) },
];
