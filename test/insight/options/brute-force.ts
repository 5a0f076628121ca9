import { optionChoices } from '../../../lib/insight/options/option-choices.ts';
import type { OptionContext } from '../../../lib/insight/options/option-context.ts';
import type { FitOption, OptionLimits, OptionSpace } from '../../../lib/insight/options/option-types.ts';
import { workOutOption } from '../../../lib/insight/options/work-out-option.ts';
import type { Simulate } from '../../../lib/model/scenario-week.ts';
import { NO_LIMITS } from './tiny-search.ts';

/** Every option of a space worked out, limits or no. */
export function everyOption(context: OptionContext, space: OptionSpace, simulate: Simulate): FitOption[] {
  return [...optionChoices(space)].flatMap((choice, place) => {
    const outcome = workOutOption(context, space, NO_LIMITS, { choice, place }, simulate);
    return outcome.kind === 'fit' ? [outcome] : [];
  });
}

/** The frontier by comparing everything that keeps to the limits with everything else. */
export function bruteFrontier(options: readonly FitOption[], limits: OptionLimits): FitOption[] {
  const within = (need: number, limit: number | null) => limit === null || need <= limit;
  const fit = options.filter(({ figures: { money, lowestCover, needs } }) => {
    const covered = limits.dscrLine === null || lowestCover === null || lowestCover >= limits.dscrLine;
    const placed = within(needs.supplyCurrent, limits.supplyCurrent) && within(needs.circuits, limits.circuits);
    return covered && placed && within(money, limits.budget) && within(needs.floorSpace, limits.floorSpace);
  });
  const beaten = (one: FitOption) =>
    one.figures.yearlyCash <= 0 ||
    fit.some(
      ({ figures, place }) =>
        figures.money <= one.figures.money &&
        figures.yearlyCash >= one.figures.yearlyCash &&
        (figures.money < one.figures.money || figures.yearlyCash > one.figures.yearlyCash || place < one.place),
    );
  return fit.filter((one) => !beaten(one)).sort((a, b) => a.figures.money - b.figures.money);
}
