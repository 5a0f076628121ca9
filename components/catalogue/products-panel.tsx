import type { FieldBlock } from '../../lib/views/fields/field-block.ts';
import { CataloguePanel } from './catalogue-panel.tsx';
import { CompositionTool } from './composition-tool.tsx';

function compositionTool(block: FieldBlock, chosen: number | null) {
  return block.id === 'products' ? (
    <CompositionTool product={chosen === null ? null : (block.owners[chosen] ?? null)} />
  ) : null;
}

/** Products of the plan. */
export default function ProductsPanel() {
  return <CataloguePanel list="products" section="product" title="Products" tools={compositionTool} />;
}
