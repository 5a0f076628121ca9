import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { findById } from '../../lib/plan/find-by-id.ts';
import type { PumpSide } from '../../lib/risk/pump-side.ts';
import { pumpSide } from '../../lib/risk/pump-side.ts';
import { formatPercent } from '../../lib/views/format-number.ts';
import { firstPumps, pumpSidesView, sideFault } from '../../lib/views/pump-sides-view.ts';
import { smallPlan } from '../model/edited-plan.ts';

const US = { system: 'us', currency: 'USD' } as const;
const PLAN = smallPlan((document) => {
  for (const pump of document.pumps) pump.failuresPerYear.value = 2;
});
const OWN = pumpSide(PLAN, 'two', { arrangement: 'own', pumpId: 'small' });
const SHARED = pumpSide(PLAN, 'two', { arrangement: 'shared', pumpId: 'good' });
const VIEW = pumpSidesView({ own: OWN, shared: SHARED }, PLAN, US);

function row(label: string) {
  return VIEW?.blocks.flatMap((block) => block.rows).find((candidate) => candidate.label.startsWith(label));
}

describe('pumpSide', () => {
  it('gives the chambers a pump each, or all of them one', () => {
    const groups = (side: PumpSide) => (side.outcome.kind === 'computed' ? side.outcome.result.plant.groups.length : 0);
    expect(groups(OWN)).toBe(2);
    expect(groups(SHARED)).toBe(1);
    expect(OWN.failures?.expected.failures).toBeGreaterThan(0);
  });
});

describe('pumpSidesView', () => {
  it('says what one pump for all makes and costs beside a pump each', () => {
    expect(VIEW?.finding).toMatch(/^One pump for all makes .+ (and|but) costs .+ to buy, (and|but) leaves .+ a week$/);
    expect(VIEW?.ownName).toMatch(/^2 × /);
    expect(VIEW?.sharedName).toMatch(/^1 × /);
  });

  it('marks the better of each pair by what is wished for', () => {
    const sides = [OWN, SHARED].map((side) => (side.outcome.kind === 'computed' ? side.outcome.result : null));
    const [own, shared] = sides.map((result) => result?.capitalTotal ?? 0);
    expect(row('To be bought')?.better).toBe((own ?? 0) < (shared ?? 0) ? 'own' : 'shared');
    const [ownDry, sharedDry] = sides.map((result) => result?.plant.dryOut ?? 0);
    const gap = Math.abs((ownDry ?? 0) - (sharedDry ?? 0)) / (ownDry ?? 1);
    expect(row('Dried product')?.better).toBe(
      gap <= 0.005 ? null : (ownDry ?? 0) > (sharedDry ?? 0) ? 'own' : 'shared',
    );
    expect(row('Pump inlet')?.better).toBeNull();
  });

  it('shows what it costs, makes, loses, and takes of oil and power as pairs, with the figures of the table', () => {
    const panels = VIEW?.panels ?? [];
    expect(panels.map(({ title }) => title)).toEqual([
      'To be bought',
      'Left over a week',
      'Dried product a week',
      'Batches lost by failures, a year',
      'Failures in a mean year',
      'Failures, one bad year in twenty',
      'Oil and upkeep a week',
      'Power for the pumps, a week',
    ]);
    expect(panels[0]?.ownText).toBe(row('To be bought')?.own);
    expect(panels[0]?.better).toBe(row('To be bought')?.better);
    for (const { own, shared, words } of panels) {
      const ratio = (shared ?? 0) / (own ?? 1);
      if (ratio > 1.01 && ratio < 2) expect(words).toBe(`shared: ${formatPercent(ratio - 1)} more`);
      if (ratio < 0.99) expect(words).toBe(`shared: ${formatPercent(1 - ratio)} less`);
    }
  });

  it('has all figures in one table, the better of each pair in words', () => {
    const rows = VIEW?.blocks.flatMap((block) => block.rows) ?? [];
    expect(VIEW?.table.rows).toHaveLength(rows.length);
    const better = rows.findIndex((one) => one.better === 'shared');
    expect(VIEW?.table.rows[better]?.[2]).toBe(`${rows[better]?.shared} (better)`);
  });

  it('parts of the failures come to their total', () => {
    for (const { total, parts } of VIEW?.failures ?? []) {
      expect(parts.spoiled + parts.idle + parts.repairs).toBeCloseTo(total, 6);
      expect(total).toBeLessThanOrEqual(VIEW?.failureTicks.at(-1) ?? 0);
    }
    expect(VIEW?.failures).toHaveLength(2);
  });

  it('is null where a side cannot run, and says why', () => {
    const refused: PumpSide = {
      ...OWN,
      failures: null,
      outcome: {
        kind: 'refused',
        scenarioId: 'x',
        name: 'x',
        findings: [{ severity: 'error', field: 'pumps', value: '', problem: 'Too weak.', remedy: 'Take another.' }],
      },
    };
    expect(pumpSidesView({ own: refused, shared: SHARED }, PLAN, US)).toBeNull();
    expect(sideFault(refused)).toBe('Too weak. Take another.');
    expect(sideFault(SHARED)).toBe('');
  });
});

describe('firstPumps', () => {
  it('keeps what the scenario has and takes today’s pump or the fastest for the other side', () => {
    expect(firstPumps(DEMO_PLAN, findById(DEMO_PLAN.scenarios, 'six-shared', 'scenario'))).toEqual({
      own: 'small',
      shared: 'good',
    });
    expect(firstPumps(DEMO_PLAN, findById(DEMO_PLAN.scenarios, 'today', 'scenario')).own).toBe('small');
  });
});
