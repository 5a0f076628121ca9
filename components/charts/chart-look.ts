/** Space around a plot; the axes bring their own. */
export const CHART_MARGIN = { top: 12, right: 20, bottom: 4, left: 0 } as const;

/** Axes without a line of their own: the grid and the marks are enough. */
export const AXIS = {
  axisLine: false,
  tickLine: false,
  tick: { fill: 'var(--ink-soft)', fontSize: 12 },
} as const;

/** The words under an axis. */
export function axisName(value: string) {
  return { value, position: 'insideBottom', fill: 'var(--ink-soft)', fontSize: 12 } as const;
}

/** The words beside an upright axis. */
export function uprightName(value: string) {
  const middle = { textAnchor: 'middle' } as const;
  return { ...axisName(value), position: 'insideLeft', angle: -90, dx: 8, style: middle } as const;
}

/** Width of an axis that carries names of scenarios or the like; longer ones break into lines. */
export const NAMES_WIDTH = 136;

/** How strongly a band of uncertainty is filled: seen on light and dark, with the lines through it still clear. */
export const BAND_OPACITY = 0.22;
