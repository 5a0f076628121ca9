import type { Finding } from '../result.ts';

/** Why a text is no plan that can be opened. Lines and columns count from 1. */
export type PlanFileError =
  | { readonly kind: 'empty' }
  /** The browser could not read the file; its own words. */
  | { readonly kind: 'unreadable'; readonly message: string }
  | { readonly kind: 'tooLarge'; readonly bytes: number; readonly limit: number }
  | { readonly kind: 'notJson'; readonly line: number; readonly column: number; readonly message: string }
  | { readonly kind: 'notAPlan' }
  | { readonly kind: 'versionTooNew'; readonly found: number; readonly known: number }
  | { readonly kind: 'invalid'; readonly findings: readonly Finding[] };
