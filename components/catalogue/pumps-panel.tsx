import { CataloguePanel } from './catalogue-panel.tsx';

/** Pumps of the plan. */
export default function PumpsPanel() {
  return <CataloguePanel list="pumps" section="pump" title="Pump types" />;
}
