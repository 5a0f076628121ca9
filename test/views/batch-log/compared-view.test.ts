import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { comparedView } from '../../../lib/views/batch-log/compared-view.ts';
import { sampleBatch, sampleCalibration } from './sample-calibration.ts';

const batches = sampleCalibration().batches;

describe('comparedView', () => {
  it('says how far off the plan is, and how far the fit', () => {
    const { finding, summary, groups } = comparedView(DEMO_PLAN, sampleCalibration());
    expect(finding).toBe('The plan misses logged hours by 18 %; with fitted values it is 3.5 %');
    expect(summary).not.toContain('edge');
    expect(groups.map(({ name, points }) => [name, points.length])).toEqual([['Strawberry slices', 2]]);
  });

  it('says so when there is nothing to gain', () => {
    const { finding } = comparedView(DEMO_PLAN, sampleCalibration({ miss: { before: 0.04, after: 0.035 } }));
    expect(finding).toBe('The model agrees with the log within 4.0 % as it is');
    expect(comparedView(DEMO_PLAN, sampleCalibration({ batches: [], miss: null })).finding).toContain(
      'No logged batch',
    );
  });

  it('keeps a batch far out at the edge with its hours, so that the others fill the chart', () => {
    const view = comparedView(
      DEMO_PLAN,
      sampleCalibration({ batches: [...batches, sampleBatch('c', 62, 16, 19.5, 'odd')] }),
    );
    expect(view.ticks.at(-1)).toBe(20);
    const odd = view.groups[0]?.points[2];
    expect(odd).toMatchObject({ measured: 62, place: 20, isOdd: true, edgeWords: '62 h →' });
    expect(view.groups[0]?.points[0]).toMatchObject({ measured: 20, place: 20, edgeWords: '' });
    expect(view.summary).toContain('A batch far out stands at the edge');
    expect(view.table.rows[2]?.slice(1)).toEqual(['62.0', '16.0', '19.5', 'no, far out']);
  });

  it('leaves out of the chart, but not out of the table, what the model cannot dry', () => {
    const never = { ...sampleBatch('n', 30, 0, 0, 'neverDry'), before: null, after: null };
    const view = comparedView(DEMO_PLAN, sampleCalibration({ batches: [...batches, never] }));
    expect(view.groups[0]?.points).toHaveLength(2);
    expect(view.table.rows[2]?.slice(1)).toEqual(['30.0', '—', '—', 'no, never dry in the model']);
  });
});
