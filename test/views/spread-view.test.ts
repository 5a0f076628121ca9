import { describe, expect, it } from 'vitest';
import { drawSummary } from '../../lib/risk/draw-summary.ts';
import type { DrawOutcome } from '../../lib/risk/evaluate-draws.ts';
import { spreadView } from '../../lib/views/spread-view.ts';

const US = { system: 'us', currency: 'USD' } as const;

function draw(payback: number | null, netPresentValue: number, lowestCover: number | null): DrawOutcome {
  return {
    kind: 'computed',
    versusToday: { payback, netPresentValue, cumulative: [], equipment: [] },
    lowestCover,
    missesLine: lowestCover !== null && lowestCover < 1.25,
    dryOut: 100,
    contribution: 500,
  };
}

const OUTCOMES: readonly DrawOutcome[] = [
  draw(20, 5000, 1.6),
  draw(24, 2000, 1.3),
  draw(31, -500, 1.2),
  draw(null, -4000, 0.9),
  { kind: 'refused', problem: 'no' },
];

const INPUT = { summary: drawSummary(OUTCOMES), outcomes: OUTCOMES, dscrLine: 1.25, inputs: 7 };

describe('spreadView', () => {
  it('counts paybacks, and those beyond the horizon in a bar of their own', () => {
    const view = spreadView(INPUT, 'payback', US);
    expect(view.bars.reduce((sum, bar) => sum + bar.count, 0)).toBe(4);
    expect(view.bars.at(-1)).toMatchObject({ key: 'later', count: 1, share: 0.25, isBad: true });
    expect(view.bars.slice(0, -1).every((bar) => !bar.isBad)).toBe(true);
    expect(view.finding).toContain('25 % of the draws not within the horizon');
  });

  it('says how often the purchase is a loss', () => {
    const view = spreadView(INPUT, 'netPresentValue', US);
    expect(view.finding).toContain('50 % of the draws make it a loss');
    const losses = view.bars.filter((bar) => bar.isBad).reduce((sum, bar) => sum + bar.count, 0);
    expect(losses).toBe(2);
  });

  it('says how often debt cover falls below the lender’s line, and marks those bars', () => {
    const view = spreadView(INPUT, 'lowestCover', US);
    expect(view.finding).toBe('In 50 % of the draws the DSCR falls below the lender’s 1.25');
    expect(view.bars.filter((bar) => bar.isBad).reduce((sum, bar) => sum + bar.count, 0)).toBe(2);
  });

  it('tells of draws in which the shop could not run, and of how many inputs were drawn', () => {
    const { summary } = spreadView(INPUT, 'payback', US);
    expect(summary).toContain('In 1 draw the shop could not run');
    expect(summary).toContain('7 inputs');
  });

  it('hands out every draw for saving', () => {
    const { series } = spreadView(INPUT, 'payback', US);
    expect(series.rows).toHaveLength(5);
    expect(series.rows[3]).toEqual([4, null, -4000, 0.9, 100, 500]);
    expect(series.rows[4]).toEqual([5, null, null, null, null, null]);
  });

  it('says so where there is nothing to spread', () => {
    const none = OUTCOMES.map((outcome) => (outcome.kind === 'computed' ? { ...outcome, versusToday: null } : outcome));
    const view = spreadView({ ...INPUT, outcomes: none, summary: drawSummary(none) }, 'payback', US);
    expect(view.bars).toEqual([]);
    expect(view.finding).toContain('no payback to spread');
  });
});
