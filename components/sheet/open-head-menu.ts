import type { KeyboardEvent } from 'react';

/** Enter on a head in focus presses the button in it, which opens the menu of its column. */
export function openHeadMenu({ key, target }: KeyboardEvent): void {
  if (key !== 'Enter' || !(target instanceof HTMLElement) || !target.matches('.ag-header-cell')) return;
  target.querySelector<HTMLButtonElement>('button')?.click();
}
