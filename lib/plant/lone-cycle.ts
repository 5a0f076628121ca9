import { chamberLoad } from './chamber-load.ts';
import { taskTime } from './crew.ts';
import { chamberFreezingTime } from './freezing-stage.ts';
import { dryLoneLoad } from './lone-load.ts';
import type { ChamberUnitSpec, MixShare, PumpGroupSpec, ShopSpec } from './types.ts';

function cycleOf(spec: ShopSpec, group: PumpGroupSpec, unit: ChamberUnitSpec, entry: MixShare): number {
  const load = chamberLoad(entry.product, unit.chamber);
  const outcome = dryLoneLoad(unit, group.pump, load);
  const dried = outcome.kind === 'dried' ? outcome.load.pumpDown + outcome.load.primary + outcome.load.secondary : 0;
  const hands = (['load', 'unload', 'clean'] as const).reduce(
    (sum, task) => sum + taskTime(spec.crew, task, load.wet),
    0,
  );
  return (
    dried + hands + (chamberFreezingTime(entry.product, unit.chamber, spec.freezer) ?? 0) + unit.chamber.defrostTime
  );
}

/**
 * Cycle of the first chamber alone on its pump, the mean over the planned mix, with no waiting for people [s]. Used only
 * to space the first loads of a staggered start.
 */
export function loneCycleTime(spec: ShopSpec): number {
  const group = spec.groups[0];
  const unit = group?.chambers[0];
  if (!group || !unit) throw new RangeError('a shop without chambers has no cycle time');
  return spec.mix.reduce(
    (sum, entry) => sum + (entry.share > 0 ? entry.share * cycleOf(spec, group, unit, entry) : 0),
    0,
  );
}
