import type { OutputField } from '../model/outputs/output-field.ts';
import type { ScenarioResult } from '../model/scenario-result.ts';
import { quantityWithUnit, type ShownAs } from './format-quantity.ts';

/** The figures that tell at a glance what a change in a catalogue did. */
const FOLLOWED: readonly string[] = ['batches', 'dryOut', 'cost.total', 'payback', 'dscr'];

export interface FollowFigure {
  readonly id: string;
  readonly label: string;
  readonly text: string;
}

/** The chosen scenario's main figures, for the line that stays in view while something else is edited. */
export function followFigures(
  outputs: readonly OutputField[],
  result: ScenarioResult,
  shown: ShownAs,
): readonly FollowFigure[] {
  return FOLLOWED.flatMap((id) => {
    const output = outputs.find((candidate) => candidate.id === id);
    if (!output) return [];
    return [{ id, label: output.label, text: quantityWithUnit(output.read(result), output.dimension, shown) }];
  });
}
