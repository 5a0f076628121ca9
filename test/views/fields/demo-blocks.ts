import type { Plan } from '../../../lib/plan/plan-types.ts';
import type { FieldEntry } from '../../../lib/views/fields/apply-fields.ts';
import {
  catalogueBlock,
  cellOfPlace,
  type FieldBlock,
  innerBlocks,
  singleBlock,
} from '../../../lib/views/fields/field-block.ts';
import type { FieldCell } from '../../../lib/views/fields/field-grid.ts';
import type { SheetState } from '../../../lib/views/sheet-state.ts';

function withInner(state: SheetState, block: FieldBlock, at: string): readonly FieldBlock[] {
  return [block, ...innerBlocks(state, block.owners, at)];
}

/** All blocks of a plan's parts that the catalogues show. */
export function allBlocks(state: SheetState): readonly FieldBlock[] {
  const catalogue = (key: string, section: Parameters<typeof catalogueBlock>[2]) =>
    withInner(state, catalogueBlock(state, key, section, key), `${key}.#`);
  const single = (section: 'site' | 'crew' | 'freezer' | 'financing') =>
    withInner(state, singleBlock(state, section, section), section);
  return [
    ...catalogue('products', 'product'),
    ...catalogue('chambers', 'chamber'),
    ...catalogue('pumps', 'pump'),
    ...catalogue('hoses', 'hose'),
    ...catalogue('crew.patterns', null),
    ...single('site'),
    ...single('crew'),
    ...(state.plan.freezer ? single('freezer') : []),
    ...single('financing'),
  ];
}

export function stateOf(plan: Plan): SheetState {
  return { plan, rejected: [], misread: [] };
}

export function cellIn(state: SheetState, place: string): FieldCell {
  const cell = cellOfPlace(allBlocks(state), place);
  if (!cell) throw new Error(`no cell ${place}`);
  return cell;
}

export function entryFor(state: SheetState, place: string, text: string): FieldEntry {
  const { look, owner } = cellIn(state, place);
  return { place, look, owner, text };
}

export function blockOf(state: SheetState, id: string): FieldBlock {
  const block = allBlocks(state).find((candidate) => candidate.id === id);
  if (!block) throw new Error(`no block ${id}`);
  return block;
}
