import { describe, expect, it } from 'vitest';
import { paybackMonthNumber, paybackView } from '../../lib/views/payback-view.ts';
import { NO_LINES, sampleView } from './sample-result.ts';

const crossed = (months: number) => ({ kind: 'crossed', months, recrosses: false }) as const;
const US = { system: 'us', currency: 'USD' } as const;
const TODAY = sampleView('Today', 0, { versusToday: null });
const SIX = sampleView('Six', 1);
const NEVER = sampleView('Never', 2, {
  versusToday: { payback: { kind: 'never' }, cumulative: [-100, -90, -80, -70], deepestCash: -100 },
});
const FREE = sampleView('Free', 3, { versusToday: { payback: { kind: 'noOutlay' }, cumulative: [0, 1, 2, 3] } });

function findingOf(currentId: string, views = [TODAY, SIX, NEVER, FREE]): string {
  return paybackView(views, currentId, US).finding;
}

describe('paybackMonthNumber', () => {
  it('counts months from one, as people do', () => {
    expect([0, 0.2, 1, 18.2, 19].map(paybackMonthNumber)).toEqual([1, 1, 1, 19, 19]);
  });
});

describe('paybackView', () => {
  it('heads the figure with what is found of the chosen scenario', () => {
    expect(findingOf('s1')).toBe('Six pays back in month 2');
    expect(findingOf('s2')).toBe('Never does not pay back within 3 months');
    expect(findingOf('s3')).toBe('Free needs no money up front, so there is nothing to pay back');
  });

  it('speaks of all scenarios when today is chosen', () => {
    expect(findingOf('s0')).toBe('Six pays back soonest, in month 2');
    expect(findingOf('s0', [TODAY, NEVER])).toBe('No scenario pays back within 3 months');
    expect(findingOf('s0', [TODAY])).toBe('Add a scenario to weigh against today');
  });

  it('draws every scenario but today, month by month', () => {
    const view = paybackView([TODAY, SIX, NEVER], 's1', US);
    expect(view.lines.map((line) => [line.name, line.paybackMonth])).toEqual([
      ['Six', 1.667],
      ['Never', null],
    ]);
    expect(view.rows).toHaveLength(4);
    expect(view.rows[3]).toEqual({ month: 3, isBefore: false, cash: { s1: 80, s2: -70 }, band: null });
    expect(view.ticks[0]).toBeLessThanOrEqual(-100);
    expect(view.ticks.at(-1)).toBeGreaterThanOrEqual(80);
  });

  it('says in words how deep it goes and where it ends', () => {
    expect(paybackView([TODAY, SIX], 's1', US).summary).toContain(
      'At its lowest it stands at −$100, after 3 months at $80.',
    );
    const dips = { cumulative: [-100, 20, -10, 30], payback: crossed(100 / 120) };
    const view = paybackView([sampleView('Dips', 1, { versusToday: dips })], 's1', US);
    expect(view.finding).toBe('Dips pays back in month 1, and dips below zero again in month 2');
    expect(view.lines[0]?.recrossings.map(({ direction }) => direction)).toEqual(['below', 'above']);
    expect(view.lines[0]?.recrossings[0]?.month).toBeCloseTo(1 + 20 / 30, 9);
  });

  it('gives the same figures as a table', () => {
    const { table } = paybackView([TODAY, SIX, NEVER], 's1', US);
    expect(table.head).toEqual(['', 'Six', 'Never']);
    expect(table.rows).toEqual([
      ['Month 0', '−100', '−100'],
      ['Payback [months]', '1.7', '—'],
    ]);
  });

  describe('with a purchase in month 2', () => {
    const steps = { lines: { ...NO_LINES, equipment: [0, 0, -100, 0, 0, 0, -60] } };
    const late = { cumulative: [0, 5, -90, -30, 30, 40, -10], payback: crossed(3.5), ...steps };
    const view = paybackView([sampleView('Late', 1, { versusToday: late })], 's1', US);

    it('is drawn as a step down at that month, not as a slope from the month before', () => {
      const drawn = view.rows.map(({ month, isBefore, cash }) => [month, isBefore, cash.s1]);
      expect(drawn.slice(1, 4)).toEqual([
        [1, false, 5],
        [2, true, 10],
        [2, false, -90],
      ]);
    });

    it('has its payback mark on the line, and on the step where a later purchase takes it below zero again', () => {
      const line = view.lines[0];
      expect([line?.paybackMonth, line?.recrossings]).toEqual([3.5, [{ month: 6, direction: 'below' }]]);
      const drawn = view.rows.filter(({ month }) => month === 3 || month === 4).map(({ cash }) => cash.s1);
      expect(drawn).toEqual([-30, 30]);
    });

    it('keeps the even flow that payback reckons with where a purchase falls into its month', () => {
      const same = { ...late, lines: { ...NO_LINES, equipment: [0, 0, -100, 0, -10, 0, 0] } };
      const { rows } = paybackView([sampleView('Same', 1, { versusToday: same })], 's1', US);
      expect(rows.filter(({ month }) => month === 4)).toHaveLength(1);
    });
  });

  describe('with the band of many draws', () => {
    const range = (low: number, high: number) => ({
      low: [-100, -90, -50, low],
      middle: [-100, -40, 20, 80],
      high: [-100, -10, 70, high],
    });
    const band = { before: range(-20, 160), after: range(-20, 160) };
    const view = paybackView([TODAY, SIX, NEVER], 's1', US, band);

    it('gives it with every month, in the table, in what is saved and in words', () => {
      expect(view.hasBand).toBe(true);
      expect(view.rows.map((row) => row.band)).toEqual([
        [-100, -100],
        [-90, -10],
        [-50, 70],
        [-20, 160],
      ]);
      expect(view.ticks.at(-1)).toBeGreaterThanOrEqual(160);
      expect(view.table.head.slice(3)).toEqual(['Six, one draw in ten below', 'Six, one in ten above']);
      expect(view.table.rows[0]).toEqual(['Month 0', '−100', '−100', '−100', '−100']);
      expect(view.series.rows[3]).toEqual([3, 80, -70, -20, 160]);
      expect(view.summary).toContain(
        'eight in ten draws of Six, each month by itself: after 3 months they lie between −$20 and $160.',
      );
    });

    it('leaves it out where the scenario itself is not drawn', () => {
      expect(paybackView([TODAY, NEVER], 's1', US, band).hasBand).toBe(false);
      expect(paybackView([TODAY, SIX], 's0', US, band).hasBand).toBe(false);
    });
  });
});
