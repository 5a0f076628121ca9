import { describe, expect, it } from 'vitest';
import type { SidePanel } from '../../lib/views/pump-side-panels.ts';
import { pumpSidesPicture } from '../../lib/views/pump-sides-picture.ts';

function panel(title: string, own: number | null, shared: number | null): SidePanel {
  return { title, own, shared, ownText: String(own), sharedText: String(shared), better: null, words: 'shared: less' };
}

const PANELS = ['a', 'b', 'c', 'd', 'e'].map((title, k) => panel(title, 100, 20 * k));

describe('pumpSidesPicture', () => {
  it.each([
    [1216, 4],
    [700, 2],
    [348, 1],
  ])('at %i px has %i frames beside each other, none over the edge nor over another', (width, columns) => {
    const { frames, height } = pumpSidesPicture(PANELS, width);
    expect(new Set(frames.map(({ x }) => x)).size).toBe(columns);
    for (const { right, bars, wordsY } of frames) {
      expect(right).toBeLessThanOrEqual(width + 1e-9);
      expect(wordsY).toBeLessThanOrEqual(height);
      for (const bar of bars) expect(bar.textX).toBeLessThan(right - 60);
    }
    const tops = frames.filter(({ x }) => x === 0).map(({ titleY }) => titleY);
    expect(tops).toEqual([...tops].sort((a, b) => a - b));
    expect(tops).toHaveLength(Math.ceil(PANELS.length / columns));
  });

  it('draws the bars of a pair to one scale', () => {
    const [own, shared] = pumpSidesPicture([panel('x', 50, 200)], 400).frames[0]?.bars ?? [];
    expect((own?.width ?? 0) / (shared?.width ?? 1)).toBeCloseTo(0.25, 12);
  });

  it('shows a little of what is hardly anything, and nothing of losses, nothings and unknowns', () => {
    const widths = (own: number | null, shared: number | null) =>
      pumpSidesPicture([panel('x', own, shared)], 400).frames[0]?.bars.map(({ width }) => width);
    expect(widths(0.001, 100)?.[0]).toBe(2);
    expect(widths(-50, 100)?.[0]).toBe(0);
    expect(widths(0, null)).toEqual([0, 0]);
  });
});
