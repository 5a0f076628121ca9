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
  { id: 'products', label: 'Products', Panel: lazy(() => import('../catalogue/products-panel.tsx')) },
  { id: 'chambers', label: 'Chambers', Panel: lazy(() => import('../catalogue/chambers-panel.tsx')) },
  { id: 'pumps', label: 'Pumps', Panel: lazy(() => import('../catalogue/pumps-panel.tsx')) },
  { id: 'hoses', label: 'Hoses', Panel: lazy(() => import('../catalogue/hoses-panel.tsx')) },
  { id: 'site', label: 'Site and crew', Panel: lazy(() => import('../catalogue/site-panel.tsx')) },
  { id: 'financing', label: 'Financing', Panel: lazy(() => import('../catalogue/financing-panel.tsx')) },
  { id: 'batch-log', label: 'Batch log', Panel: lazy(() => import('../batchlog/batch-log-panel.tsx')) },
  { id: 'search', label: 'Find options', Panel: lazy(() => import('../search/search-panel.tsx')) },
  { id: 'lender', label: 'Lender pack', Panel: lazy(() => import('../lender/lender-panel.tsx')) },
];
