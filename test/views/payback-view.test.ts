import { describe, expect, it } from 'vitest';
import { paybackMonthNumber, paybackView } from '../../lib/views/payback-view.ts';
import { sampleView } from './sample-result.ts';

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
    expect(view.rows[3]).toEqual({ month: 3, cash: { s1: 80, s2: -70 } });
    expect(view.ticks[0]).toBeLessThanOrEqual(-100);
    expect(view.ticks.at(-1)).toBeGreaterThanOrEqual(80);
  });

  it('says in words how deep it goes and where it ends', () => {
    expect(paybackView([TODAY, SIX], 's1', US).summary).toContain(
      'At its lowest it stands at −$100, after 3 months at $80.',
    );
    const view = paybackView([sampleView('Dips', 1, { versusToday: { cumulative: [-100, 20, -10, 30] } })], 's1', US);
    expect(view.finding).toBe('Dips pays back in month 2, and dips below zero again in month 2');
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
});
