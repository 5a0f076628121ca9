import type { Origin } from '../../inputs/quantity.ts';
import type { Result } from '../../result.ts';
import type { TextFault } from '../mix-text.ts';

/** What was understood of a text: the value the plan gets, and words for it where it is not shown as it was typed. */
export interface FieldReading {
  readonly value: unknown;
  readonly understood: string;
}

/** How a field of the plan is shown and read, whatever kind it is. All parts are pure functions of the field's value. */
export interface FieldLook {
  /** Key under which the plan keeps the value. */
  readonly key: string;
  readonly label: string;
  readonly meaning: string;
  /** Unit in which it is shown; empty when there is none. */
  readonly unit: string;
  readonly group: string;
  /** True for figures, which are set to the right. */
  readonly isFigure: boolean;
  /** The words to choose from; null for free text. */
  readonly options: readonly string[] | null;
  readonly text: (value: unknown) => string;
  /** What editing starts from and what is copied: plain figures without marks for thousands. */
  readonly plainText: (value: unknown) => string;
  /** Where the value came from; null for what needs no origin, such as a choice. */
  readonly originOf: (value: unknown) => Origin | null;
  /** What a text comes to, where the field holds `value` now. */
  readonly read: (text: string, value: unknown) => Result<FieldReading, TextFault>;
  /** What an emptied field goes back to; undefined when it cannot be emptied. */
  readonly usual: unknown;
}

/** A field without an origin that is shown as it is copied. */
export const NO_ORIGIN = (): null => null;
