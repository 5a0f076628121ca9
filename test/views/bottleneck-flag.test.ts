import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { bottleneckFlag } from '../../lib/views/bottleneck-flag.ts';
import { reliefView as reliefOf } from '../../lib/views/relief-view.ts';
import { SAMPLE_BOTTLENECK } from './sample-result.ts';

const US = { system: 'us', currency: 'USD' } as const;
const SIX = DEMO_PLAN.scenarios[3] as (typeof DEMO_PLAN.scenarios)[number];

function reliefView(bottleneck: Parameters<typeof reliefOf>[0], shown: typeof US) {
  return reliefOf(bottleneck, DEMO_PLAN, SIX, shown);
}

describe('bottleneckFlag', () => {
  it('names what holds the shop back, with the figure behind it', () => {
    expect(bottleneckFlag(SAMPLE_BOTTLENECK, 1)).toEqual({
      tone: 'limit',
      title: 'People',
      figure: '+13 % with a quarter more',
    });
  });

  it('says that a shared pump jams, and what the last chamber on it adds', () => {
    const jam = { ...SAMPLE_BOTTLENECK, sharedPumpJams: true, lastChamberAdds: 0.41 };
    expect(bottleneckFlag(jam, 8)).toEqual({ tone: 'jam', title: 'Shared pump jams', figure: '8th chamber adds 41 %' });
  });

  it.each([
    [-0.12, '8th chamber lowers output', 'the last chamber on it lowers output'],
    [-0.0001, '8th chamber adds nothing', 'the last chamber on it adds nothing'],
    [0, '8th chamber adds nothing', 'the last chamber on it adds nothing'],
  ])('tells a last chamber that takes output away from one that adds nothing: %s', (share, figure, finding) => {
    const jam = { ...SAMPLE_BOTTLENECK, sharedPumpJams: true, lastChamberAdds: share };
    expect(bottleneckFlag(jam, 8).figure).toBe(figure);
    expect(reliefView(jam, US).finding).toBe(`The shared pump jams: ${finding}`);
  });

  it('falls back on the gain when the last chamber cannot be told', () => {
    const jam = { ...SAMPLE_BOTTLENECK, sharedPumpJams: true, lastChamberAdds: null };
    expect(bottleneckFlag(jam, 8).figure).toBe('+13 % with a quarter more');
  });

  it('says so when nothing in particular does', () => {
    expect(bottleneckFlag({ ...SAMPLE_BOTTLENECK, resource: null, gainShare: 0 }, 1)).toMatchObject({
      tone: 'balanced',
      title: 'Balanced',
    });
  });
});

describe('reliefView', () => {
  const view = reliefView(SAMPLE_BOTTLENECK, US);

  it('puts the largest gain first and leaves out what the shop does not have', () => {
    expect(view.rows.map((row) => row.label)).toEqual(['People', 'Chambers', 'Shelf heat', 'Power supply']);
    expect(view.gainTicks.at(-1)).toBe(150);
    expect(view.worthMending.map((row) => row.label)).toEqual(['People', 'Chambers']);
  });

  it('shows gains in money and share, "nothing" for next to none, a dash where a rerun means nothing', () => {
    expect(view.rows.map((row) => row.gainText)).toEqual(['$125 (13 %)', '$20 (2.0 %)', 'nothing', '—']);
    expect(view.table.rows[0]?.slice(0, 3)).toEqual(['People', '40 %', '$125 (13 %)']);
  });

  it('heads the figure with the finding', () => {
    expect(view.finding).toBe('Hands hold it back: a quarter more would bring 13 %');
    const jam = { ...SAMPLE_BOTTLENECK, sharedPumpJams: true, lastChamberAdds: 0.41 };
    expect(reliefView(jam, US).finding).toBe('The shared pump jams: the last chamber on it adds 41 % of what it could');
    expect(reliefView({ ...SAMPLE_BOTTLENECK, resource: null }, US).finding).toContain('Nothing in particular');
  });
});
