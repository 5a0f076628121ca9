import { CataloguePanel } from './catalogue-panel.tsx';

/** Products of the plan. */
export default function ProductsPanel() {
  return <CataloguePanel list="products" section="product" title="Products" />;
}
