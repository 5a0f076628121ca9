import { WEEK } from './crew.ts';
import type { Shop } from './shop-state.ts';

/** The measured weeks of a run. */
export interface Window {
  readonly start: number;
  readonly end: number;
  readonly weeks: number;
}

export function measuredWindow(shop: Shop): Window {
  const start = shop.spec.warmUpWeeks * WEEK;
  return { start, end: shop.end, weeks: shop.spec.measuredWeeks };
}

/** Length of the part of [start, end] that lies in the window [s]. */
export function overlap(window: { readonly start: number; readonly end: number }, start: number, end: number): number {
  return Math.max(0, Math.min(window.end, end) - Math.max(window.start, start));
}
