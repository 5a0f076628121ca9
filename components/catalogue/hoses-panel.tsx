import { CataloguePanel } from './catalogue-panel.tsx';

/** Hoses of the plan. */
export default function HosesPanel() {
  return <CataloguePanel list="hoses" section="hose" title="Hoses" />;
}
