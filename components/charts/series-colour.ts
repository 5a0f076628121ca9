import { seriesNumber } from '../../lib/views/scenario-view.ts';

/** CSS colour that belongs to the scenario at this place in the plan. */
export function seriesColour(place: number): string {
  return `var(--series-${seriesNumber(place)})`;
}
