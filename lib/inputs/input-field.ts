import type { SourceKey } from '../sources.ts';
import type { Dimension } from '../units/dimension.ts';
import type { Origin } from './quantity.ts';

interface FieldBase {
  /** Section and key, such as `chamber.shelfArea`; the plan keeps the value under the key. */
  readonly id: string;
  readonly label: string;
  /** One plain sentence for a clever reader who is no engineer. */
  readonly meaning: string;
  /** Heading under which sheets show it. */
  readonly group: string;
}

interface NumericBase extends FieldBase {
  readonly dimension: Dimension;
  /** Unit in which the default and the range are written. */
  readonly unit: string;
  /** Least and greatest value allowed, both included. */
  readonly min: number;
  readonly max: number;
  readonly integer?: boolean;
  readonly nullable?: boolean;
}

/** A fact about the shop: a number with a unit and an origin. */
export interface QuantityField extends NumericBase {
  readonly kind: 'quantity';
  /** Default; null where "none" is the usual case. */
  readonly value: number | null;
  readonly origin: Origin;
  readonly source?: SourceKey;
  /** Whom to ask before relying on it, for numbers that laws, tax offices or lenders set. */
  readonly ask?: string;
}

/** A choice the planner makes, such as how many chambers: a bare number in the row's own unit. */
export interface NumberField extends NumericBase {
  readonly kind: 'number';
  readonly value: number | null;
}

export interface FlagField extends FieldBase {
  readonly kind: 'flag';
  readonly value: boolean;
}

export interface ChoiceOption {
  readonly value: string;
  readonly label: string;
  readonly meaning: string;
}

export interface ChoiceField extends FieldBase {
  readonly kind: 'choice';
  readonly value: string;
  readonly options: readonly ChoiceOption[];
}

/** One row of the register of inputs. */
export type InputField = QuantityField | NumberField | FlagField | ChoiceField;
