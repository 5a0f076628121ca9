import { CataloguePanel } from './catalogue-panel.tsx';

/** Chambers of the plan. */
export default function ChambersPanel() {
  return <CataloguePanel list="chambers" section="chamber" title="Chamber types" />;
}
