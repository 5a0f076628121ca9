import { describe, expect, it } from 'vitest';
import type { KneeCurve } from '../../lib/insight/insight-types.ts';
import { kneeView } from '../../lib/views/knee-view.ts';

const SI = { system: 'si', currency: 'USD' } as const;
const US = { system: 'us', currency: 'USD' } as const;

const CURVE: KneeCurve = {
  points: [
    { chambers: 1, shared: 10, own: 10, added: null, binds: 'shelfTemperature' },
    { chambers: 2, shared: 19, own: 20, added: 0.9, binds: 'shelfTemperature' },
    { chambers: 3, shared: 23.1, own: 30, added: 0.41, binds: 'shelfTemperature' },
    { chambers: 4, shared: null, own: 40, added: null, binds: null },
  ],
  knee: 3,
  threshold: 0.8,
};

describe('kneeView', () => {
  it('heads the figure with the chamber that adds too little', () => {
    const view = kneeView(CURVE, SI);
    expect(view.finding).toBe('On one pump the 3rd chamber adds 41 % of what it could');
    expect(view.summary).toContain('less than 80 %');
    expect(view.summary).toContain('here the 3rd');
  });

  it('says when the pump carries all that were tried', () => {
    const view = kneeView({ ...CURVE, points: CURVE.points.slice(0, 2), knee: null }, SI);
    expect(view.finding).toBe('One pump carries 2 chambers without jamming');
    expect(view.summary).toContain('it was not reached');
  });

  it('says when one chamber more cannot run at all, and when it takes away', () => {
    expect(kneeView({ ...CURVE, knee: 4 }, SI).finding).toBe('One pump cannot carry a 4th chamber');
    const worse = CURVE.points.map((point) => (point.chambers === 3 ? { ...point, added: -0.3 } : point));
    expect(kneeView({ ...CURVE, points: worse }, SI).finding).toBe(
      'On one pump the 3rd chamber adds 0 % of what it could',
    );
  });

  it('shows output in the unit of the user, with gaps where a set-up cannot run', () => {
    const view = kneeView(CURVE, US);
    expect(view.unit).toBe('lb a week');
    expect(view.rows[0]?.shared).toBeCloseTo(22.046, 3);
    expect(view.rows[3]?.shared).toBeNull();
    expect(view.table.rows[2]).toEqual(['3', '50.9', '66.1', '41 %', 'shelf programme']);
    expect(view.table.rows[3]).toEqual(['4', '—', '88.2', '—', '—']);
  });
});
