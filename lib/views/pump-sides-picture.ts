import type { SidePanel } from './pump-side-panels.ts';

/** One bar with its words [px]. */
export interface SideBar {
  readonly side: 'own' | 'shared';
  readonly name: string;
  readonly nameX: number;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly middle: number;
  readonly text: string;
  readonly textX: number;
  readonly isBetter: boolean;
}

export interface SideFrame {
  readonly title: string;
  readonly x: number;
  readonly titleY: number;
  readonly right: number;
  readonly bars: readonly SideBar[];
  readonly words: string;
  readonly wordsX: number;
  readonly wordsY: number;
  readonly better: SidePanel['better'];
}

export interface SidesPicture {
  readonly width: number;
  readonly height: number;
  readonly frames: readonly SideFrame[];
}

const NAMES = { own: 'pump each', shared: 'one for all' } as const;

/** Least width of a frame, and what stands between frames [px]. */
const LEAST_FRAME = 264;
const GAP = 40;
const MOST_COLUMNS = 4;
/** Room beside a bar for its name and for its figure [px]. */
const NAME_ROOM = 80;
const FIGURE_ROOM = 92;
const BAR = 20;
const BAR_GAP = 6;
const TITLE_ROOM = 26;
const WORDS_ROOM = 24;
const FRAME_HEIGHT = TITLE_ROOM + 2 * BAR + BAR_GAP + WORDS_ROOM;
const ROW_GAP = 28;
/** A figure that is not nothing is always to be seen [px]. */
const LEAST_BAR = 2;

function columnsFor(width: number, panels: number): number {
  const fit = Math.floor((width + GAP) / (LEAST_FRAME + GAP));
  return Math.max(1, Math.min(MOST_COLUMNS, fit, panels));
}

/** A bar from zero on; losses have none, their figure says it. */
function barsOf(panel: SidePanel, x: number, y: number, room: number): SideBar[] {
  const most = Math.max(panel.own ?? 0, panel.shared ?? 0);
  return (['own', 'shared'] as const).map((side, k) => {
    const value = Math.max(0, panel[side] ?? 0);
    const width = most > 0 && value > 0 ? Math.max(LEAST_BAR, (value / most) * room) : 0;
    const top = y + TITLE_ROOM + k * (BAR + BAR_GAP);
    return {
      side,
      name: NAMES[side],
      nameX: x + NAME_ROOM - 8,
      x: x + NAME_ROOM,
      y: top,
      width,
      height: BAR,
      middle: top + BAR / 2,
      text: side === 'own' ? panel.ownText : panel.sharedText,
      textX: x + NAME_ROOM + width + 6,
      isBetter: panel.better === side,
    };
  });
}

function frameOf(panel: SidePanel, x: number, y: number, width: number): SideFrame {
  return {
    title: panel.title,
    x,
    titleY: y + 14,
    right: x + width,
    bars: barsOf(panel, x, y, Math.max(20, width - NAME_ROOM - FIGURE_ROOM)),
    words: panel.words,
    wordsX: x + NAME_ROOM,
    wordsY: y + FRAME_HEIGHT - 6,
    better: panel.better,
  };
}

/** Where everything of the picture stands, for a width [px]. */
export function pumpSidesPicture(panels: readonly SidePanel[], width: number): SidesPicture {
  const columns = columnsFor(width, panels.length);
  const frameWidth = (width - (columns - 1) * GAP) / columns;
  const rows = Math.ceil(panels.length / columns);
  const frames = panels.map((panel, k) =>
    frameOf(panel, (k % columns) * (frameWidth + GAP), Math.floor(k / columns) * (FRAME_HEIGHT + ROW_GAP), frameWidth),
  );
  return { width, height: rows * FRAME_HEIGHT + (rows - 1) * ROW_GAP, frames };
}
