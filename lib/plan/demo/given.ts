import type { Origin, Quantity } from '../../inputs/quantity.ts';
import type { SourceKey } from '../../sources.ts';

interface Extra {
  readonly low?: number;
  readonly high?: number;
  readonly source?: SourceKey;
  readonly note?: string;
}

/** A quantity of the demo plan. */
export function given(value: number, unit: string, origin: Origin, extra: Extra = {}): Quantity {
  return { value, unit, origin, ...extra };
}
