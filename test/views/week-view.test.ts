import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { weekPicture } from '../../lib/views/week-picture.ts';
import { clockText } from '../../lib/views/week-times.ts';
import { peopleOnShift, weekView } from '../../lib/views/week-view.ts';
import { SAMPLE_PLANT } from './sample-result.ts';
import { scenarioOf } from './sheet-of-demo.ts';

const US = { system: 'us', currency: 'USD' } as const;
const TODAY = scenarioOf(DEMO_PLAN, 'today');
const HOUR = 3600;

describe('clockText', () => {
  it('tells weekday and clock', () => {
    expect([0, 37.5 * HOUR, 168 * HOUR - 60].map(clockText)).toEqual(['Mon 00:00', 'Tue 13:30', 'Sun 23:59']);
  });
});

describe('peopleOnShift', () => {
  it('adds up the shifts of the scenario through the week', () => {
    const steps = peopleOnShift(DEMO_PLAN, scenarioOf(DEMO_PLAN, 'six-shared'));
    const at = (time: number) => steps.filter(([start]) => start <= time).at(-1)?.[1];
    const pattern = DEMO_PLAN.crew.patterns.find((candidate) => candidate.id === 'two-shifts');
    for (const hour of [3, 7, 13.9, 14.1, 21, 23, 5 * 24 + 9, 6 * 24 + 9]) {
      const [day, clock] = [Math.floor(hour / 24), hour % 24];
      const expected = pattern?.shifts
        .filter((shift) => shift.weekdays.includes(day) && shift.start <= clock && clock < shift.end)
        .reduce((sum, shift) => sum + shift.people, 0);
      expect(at(hour * HOUR), `hour ${hour}`).toBe(expected);
    }
  });
});

describe('weekView', () => {
  const view = weekView(DEMO_PLAN, TODAY, SAMPLE_PLANT, US);

  it('heads the figure with how much of the week is drying and what is waited for most', () => {
    expect(view.finding).toBe('Chambers dry 50 % of the week and wait for people 25 % of it');
    const busy = { ...SAMPLE_PLANT, phases: { ...SAMPLE_PLANT.phases, hold: 0 } };
    expect(weekView(DEMO_PLAN, TODAY, busy, US).finding).toBe('Chambers dry 50 % of the week');
  });

  it('says in words how long the pump runs and how often the ceiling is met', () => {
    expect(view.summary).toMatch(/^The pump runs 100 hours a week\. 21 % of the drying time/);
  });

  it('lists only what occurs', () => {
    expect(view.legend.map((entry) => entry.kind)).toEqual(['primary', 'waitingForPeople', 'idle']);
    expect(view.table.rows.map((row) => row[1])).toEqual(['84.0', '100.0', '68.0', '84.0']);
  });

  it('takes the ceiling and the tolerance from the plan', () => {
    expect(view.picture.ceiling).toBeCloseTo(86.66, 1);
    expect(view.picture.tolerance).toBeGreaterThan(0);
  });
});

describe('weekPicture', () => {
  const { picture: input } = weekView(DEMO_PLAN, TODAY, SAMPLE_PLANT, US);
  const picture = weekPicture({ ...input, width: 1000 });

  it('lays every lane out over the whole week', () => {
    const [first, second] = picture.lanes;
    expect(first?.bars.map((bar) => bar.kind)).toEqual(['primary', 'waitingForPeople']);
    expect(first?.bars[0]?.x).toBe(picture.left);
    expect(first?.bars[1]?.x).toBeCloseTo((picture.left + picture.right) / 2, 6);
    expect((second?.bars[0]?.x ?? 0) + (second?.bars[0]?.width ?? 0)).toBeCloseTo(picture.right, 6);
  });

  it('tells each stretch in words', () => {
    expect(picture.lanes[0]?.bars[0]?.words).toMatch(/^drying the ice off, Strawberry slices: Mon 00:00 to Thu 12:00$/);
    expect(picture.lanes[1]?.bars[0]?.words).toMatch(/^nothing left to make: Mon 00:00/);
  });

  it('keeps everything inside the picture', () => {
    const panels = picture.panels.flatMap((panel) => panel.ticks.map((tick) => tick.y));
    expect(Math.max(...panels)).toBeLessThan(picture.height);
    expect(Math.min(...panels)).toBeGreaterThan(0);
    const figures = picture.panels.flatMap((panel) => `${panel.area}${panel.line}`.match(/-?\d+(\.\d+)?/g) ?? []);
    expect(figures.every((figure) => Number(figure) >= 0 && Number.isFinite(Number(figure)))).toBe(true);
  });

  it('shows the limit where it is on the scale and tells it in words where it is not', () => {
    const limits = (tolerance: number | null) => weekPicture({ ...input, tolerance, width: 1000 }).panels[0];
    expect(limits(3e-5)?.limit?.label).toBe('what the pump can swallow');
    expect(limits(1)?.limit).toBeNull();
    expect(limits(1)?.label).toContain('far below the 7,937 lb/h');
    expect(limits(null)?.label).toBe('Vapour to the pump');
  });

  it('fits a phone and twenty chambers', () => {
    const small = weekPicture({ ...input, chambers: 20, width: 330 });
    expect(small.lanes).toHaveLength(20);
    expect(small.right).toBeLessThanOrEqual(330);
    expect(small.laneHeight).toBeLessThan(picture.laneHeight);
  });
});
