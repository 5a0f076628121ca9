/** The figures by what they are about, in the order of the page. */
export const FIGURE_GROUPS = [
  { name: 'Money', figures: ['Payback', 'What a batch costs'] },
  { name: 'The week', figures: ['A typical week', 'Where a batch’s hours go', 'What jams'] },
  { name: 'The pump', figures: ['Chambers against output', 'Knee and pump speed', 'Shared pump or own pumps'] },
  { name: 'How sure it is', figures: ['When things go wrong', 'What must be true', 'What moves the answer', 'Spread'] },
] as const;

export type FigureName = (typeof FIGURE_GROUPS)[number]['figures'][number];

/** Id of the element that holds a figure. */
export function slotId(name: FigureName): string {
  return `figure-${name.toLowerCase().replace(/[^a-z]+/g, '-')}`;
}
