/** Space around a plot; the axes bring their own. */
export const CHART_MARGIN = { top: 12, right: 12, bottom: 4, left: 0 } as const;

/** Axes without a line of their own: the grid and the marks are enough. */
export const AXIS = {
  axisLine: false,
  tickLine: false,
  tick: { fill: 'var(--ink-soft)', fontSize: 12 },
} as const;
