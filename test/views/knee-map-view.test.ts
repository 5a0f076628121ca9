import { describe, expect, it } from 'vitest';
import { KNEE_MAP_SPEEDS, kneeMap } from '../../lib/insight/knee-map.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { findById } from '../../lib/plan/find-by-id.ts';
import { kneeMapView } from '../../lib/views/knee-map-view.ts';

const SI = { system: 'si', currency: 'USD' } as const;
const THREE = findById(DEMO_PLAN.scenarios, 'three-shared', 'scenario');

/** Outputs of one to four chambers: the faster the pump, the later it jams. */
const OUTPUTS = KNEE_MAP_SPEEDS.map((factor) => {
  const carried = factor < 1 ? 2 : factor < 2 ? 3 : 4;
  return [1, 2, 3, 4].map((chambers) => 10 * Math.min(chambers, carried) + Math.max(0, chambers - carried));
});
const MAP = kneeMap(OUTPUTS);

describe('kneeMap', () => {
  it('finds the knee of every speed', () => {
    expect(MAP.rows.map((row) => row.knee)).toEqual([3, 3, 4, 4, null, null]);
  });

  it('says what each chamber adds of what it could', () => {
    expect(MAP.rows[0]?.cells.map((cell) => cell.added)).toEqual([null, 1, 0.1, 0.1]);
  });

  it('takes a set-up that cannot run for a jam', () => {
    expect(kneeMap([[10, null]]).rows[0]?.knee).toBe(2);
    expect(kneeMap([[null, null]]).rows[0]?.cells[1]?.added).toBeNull();
  });
});

describe('kneeMapView', () => {
  const view = kneeMapView(MAP, DEMO_PLAN, THREE, SI);

  it('says whether the pump is right for the chambers', () => {
    expect(view.finding).toBe('The pump is just right for 3 chambers: a smaller one would jam');
    const four = findById(DEMO_PLAN.scenarios, 'four-shared', 'scenario');
    expect(kneeMapView(MAP, DEMO_PLAN, four, SI).finding).toMatch(
      /^For 4 chambers the pump would have to be .+ m³\/h, where this one jams at the 4th$/,
    );
    const six = findById(DEMO_PLAN.scenarios, 'six-shared', 'scenario');
    const jammed = { ...MAP, rows: MAP.rows.map((row) => ({ ...row, knee: 3 })) };
    expect(kneeMapView(jammed, DEMO_PLAN, six, SI).finding).toMatch(/^No pump up to .+ carries 6 chambers well$/);
  });

  it('draws the fastest pump on top and marks where the scenario stands', () => {
    expect(view.lines).toHaveLength(KNEE_MAP_SPEEDS.length);
    const here = view.lines.flatMap((line, k) =>
      line.marks.filter((mark) => mark.isHere).map((mark) => [k, mark.chambers]),
    );
    expect(here).toEqual([[3, 3]]);
    expect(view.lines[0]?.marks.map((mark) => mark.tone)).toEqual(['pays', 'pays', 'pays', 'pays']);
    expect(view.lines.at(-1)?.marks.map((mark) => mark.tone)).toEqual(['pays', 'pays', 'jams', 'jams']);
  });

  it('hands out every field for saving', () => {
    expect(view.series.rows).toHaveLength(KNEE_MAP_SPEEDS.length * 4);
  });
});
