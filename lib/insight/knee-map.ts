import type { KneeMap, KneeMapCell, KneeMapRow } from './insight-types.ts';
import { KNEE_THRESHOLD } from './knee-threshold.ts';

/** Pump speeds that are tried, as shares of the pump's own. */
export const KNEE_MAP_SPEEDS = [0.5, 0.75, 1, 1.5, 2, 3] as const;

function cellOf(output: number | null, before: number | null, lone: number | null, chambers: number): KneeMapCell {
  const comparable = output !== null && before !== null && lone !== null && lone > 0;
  return { chambers, output, added: comparable && chambers > 1 ? (output - before) / lone : null };
}

function rowOf(factor: number, outputs: readonly (number | null)[]): KneeMapRow {
  const [lone = null] = outputs;
  const cells = outputs.map((output, k) => cellOf(output, k === 0 ? 0 : (outputs[k - 1] ?? null), lone, k + 1));
  const jams = (cell: KneeMapCell) => cell.output === null || (cell.added ?? 1) < KNEE_THRESHOLD;
  return { factor, cells, knee: cells.find((cell) => cell.chambers > 1 && jams(cell))?.chambers ?? null };
}

/**
 * The map from its outputs: for every speed, what each chamber added brings over what it would bring alone on such a pump.
 * @param outputs by speed of `KNEE_MAP_SPEEDS`, then by number of chambers from 1 on
 */
export function kneeMap(outputs: readonly (readonly (number | null)[])[]): KneeMap {
  return { rows: KNEE_MAP_SPEEDS.map((factor, k) => rowOf(factor, outputs[k] ?? [])), threshold: KNEE_THRESHOLD };
}
