import { useMemo } from 'react';
import { defaultValues } from '../../lib/inputs/default-values.ts';
import { PART_CAUTIONS } from '../../lib/views/cautions.ts';
import { catalogueBlock, innerBlocks, singleBlock } from '../../lib/views/fields/field-block.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import type { SheetState } from '../../lib/views/sheet-state.ts';
import { getPlanner } from '../state/planner.ts';
import { usePlanner } from '../state/use-planner.ts';
import { PartPanel } from './part-panel.tsx';

function siteBlocks(state: SheetState) {
  const site = singleBlock(state, 'site', 'The site');
  const crew = singleBlock(state, 'crew', 'The crew');
  const patterns = catalogueBlock(state, 'crew.patterns', null, 'Shift patterns');
  return [
    site,
    ...innerBlocks(state, site.owners, 'site'),
    patterns,
    ...innerBlocks(state, patterns.owners, 'crew.patterns.#'),
    crew,
    ...(state.plan.freezer ? [singleBlock(state, 'freezer', 'The freezer')] : []),
  ];
}

function FreezerSwitch({ isThere }: { readonly isThere: boolean }) {
  const change = () => {
    const freezer = isThere ? null : defaultValues('freezer');
    const said = isThere
      ? 'The shop has no freezer of its own.'
      : 'A freezer with the usual values. Change what differs.';
    getPlanner().command({ kind: 'setFreezer', freezer }, said);
  };
  return (
    <label>
      <input type="checkbox" checked={isThere} onChange={change} /> The shop has a freezer for loads that go in frozen
    </label>
  );
}

/** The site, the people with their shifts, and the freezer. */
export default function SitePanel() {
  const sheet = usePlanner((state) => state.sheet);
  const state = useMemo(() => presentState(sheet), [sheet]);
  const blocks = useMemo(() => siteBlocks(state), [state]);
  return (
    <PartPanel state={state} blocks={blocks} cautions={PART_CAUTIONS.site}>
      <FreezerSwitch isThere={state.plan.freezer !== null} />
    </PartPanel>
  );
}
