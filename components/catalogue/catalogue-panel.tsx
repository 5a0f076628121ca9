import { type ReactNode, useMemo } from 'react';
import { PART_CAUTIONS } from '../../lib/views/cautions.ts';
import { catalogueBlock, type FieldBlock, innerBlocks } from '../../lib/views/fields/field-block.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import { usePlanner } from '../state/use-planner.ts';
import { PartPanel } from './part-panel.tsx';

interface Props {
  readonly list: 'products' | 'chambers' | 'pumps' | 'hoses';
  readonly section: 'product' | 'chamber' | 'pump' | 'hose';
  readonly title: string;
  readonly tools?: (block: FieldBlock, chosen: number | null) => ReactNode;
}

/** A catalogue of the plan: its items side by side, and the lists inside them. */
export function CataloguePanel({ list, section, title, tools }: Props) {
  const sheet = usePlanner((state) => state.sheet);
  const state = useMemo(() => presentState(sheet), [sheet]);
  const blocks = useMemo(() => {
    const items = catalogueBlock(state, list, section, title);
    return [items, ...innerBlocks(state, items.owners, `${list}.#`)];
  }, [state, list, section, title]);
  return <PartPanel state={state} blocks={blocks} cautions={PART_CAUTIONS[list]} tools={tools} />;
}
