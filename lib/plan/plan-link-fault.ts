import type { PlanFileError } from './plan-file-error.ts';

/** Why a link carries no plan that can be opened, or why a plan finds no place in a link. */
export type PlanLinkFault =
  | { readonly kind: 'tooLong'; readonly characters: number; readonly limit: number }
  /** Made by a planner that packs plans in another way. */
  | { readonly kind: 'otherForm' }
  | { readonly kind: 'damaged' }
  | { readonly kind: 'file'; readonly error: PlanFileError };
