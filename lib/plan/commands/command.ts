import type { Quantity } from '../../inputs/quantity.ts';
import type { CatalogueName } from '../mentions.ts';
import type { Freezer, LogEntry, Scenario } from '../plan-types.ts';

type ScenarioField = Exclude<keyof Scenario, 'id'>;

/** One field of one scenario set to a value. */
export type ScenarioChange = {
  [Field in ScenarioField]: { readonly scenario: string; readonly field: Field; readonly value: Scenario[Field] };
}[ScenarioField];

/** Parts of one quantity set; parts given as undefined are removed, parts left out stay. Null empties the field. */
export interface QuantityChange {
  readonly path: string;
  readonly quantity: Partial<Quantity> | null;
}

/** Any other field set: a flag, a choice, a text or a whole list. */
export interface ValueChange {
  readonly path: string;
  readonly value: unknown;
}

/** One gesture of the user, as a value. Paths are those of findings, such as `products.2.load`. */
export type Command =
  | { readonly kind: 'setScenarioFields'; readonly changes: readonly ScenarioChange[] }
  | { readonly kind: 'setQuantities'; readonly changes: readonly QuantityChange[] }
  | { readonly kind: 'setValues'; readonly changes: readonly ValueChange[] }
  /** A copy of `from` under a new id and name, at `position` in the list or else right after `from`. */
  | {
      readonly kind: 'addScenario';
      readonly from: string;
      readonly id: string;
      readonly name: string;
      readonly position?: number;
    }
  /** A scenario made elsewhere, under an id that no other has, at `position` in the list or else at its end. */
  | { readonly kind: 'insertScenario'; readonly scenario: Scenario; readonly position?: number }
  | { readonly kind: 'removeScenarios'; readonly ids: readonly string[] }
  /** In the order they have, to `position` in the list, counted from 0 after they are taken out; position 0 is today. */
  | { readonly kind: 'moveScenarios'; readonly ids: readonly string[]; readonly position: number }
  | { readonly kind: 'renameScenario'; readonly id: string; readonly name: string }
  /** A copy of `from` under a new id and name, at the end of its catalogue. */
  | {
      readonly kind: 'addItem';
      readonly list: CatalogueName;
      readonly from: string;
      readonly id: string;
      readonly name: string;
    }
  | { readonly kind: 'removeItem'; readonly list: CatalogueName; readonly id: string }
  | { readonly kind: 'setFreezer'; readonly freezer: Freezer | null }
  | { readonly kind: 'addLogEntries'; readonly entries: readonly LogEntry[] }
  | { readonly kind: 'removeLogEntries'; readonly ids: readonly string[] };
