import { describe, expect, it } from 'vitest';
import { plantMemory } from '../../lib/risk/plant-memory.ts';
import type { ScenarioRisk } from '../../lib/risk/scenario-risk.ts';
import { scenarioRisk } from '../../lib/risk/scenario-risk.ts';
import { formatFixed } from '../../lib/views/format-number.ts';
import { stressView } from '../../lib/views/stress-view.ts';
import { computed } from '../model/computed.ts';
import { smallPlan } from '../model/edited-plan.ts';

const SHOWN = { system: 'us', currency: 'USD' } as const;
const PLAN = smallPlan();
const RISK = scenarioRisk(PLAN, computed(PLAN, 'two'), plantMemory().simulate) as ScenarioRisk;

describe('what stress leaves of a scenario', () => {
  const view = stressView(RISK, 1.25, SHOWN);

  it('names every case with its size, and shows the figures of the stress test', () => {
    expect(view.rows.map((row) => row.label)).toEqual([
      'As planned',
      'Sales down 20 %',
      'Costs up 10 %',
      'Interest up 3 points',
      '6 months late',
      expect.stringMatching(/^Biggest customer lost \(\d+ %\)$/),
      'All together',
    ]);
    expect(view.rows.map((row) => row.cover)).toEqual(RISK.stress.map((outcome) => outcome.lowestCover));
    expect(view.series.rows.map((row) => row[2])).toEqual(RISK.stress.map((outcome) => outcome.lowestCash));
    view.table.rows.forEach((row, i) => {
      const cover = RISK.stress[i]?.lowestCover;
      expect(row[1]).toBe(cover === null || cover === undefined ? '–' : formatFixed(cover, 2));
    });
  });

  it('says first how far sales may fall, and then what failing pumps cost', () => {
    const falls: ScenarioRisk = {
      ...RISK,
      untilLine: { kind: 'falls', revenueFall: 0.12 },
      untilUncovered: { kind: 'falls', revenueFall: 0.31 },
    };
    const { finding, summary } = stressView(falls, 1.25, SHOWN);
    expect(finding).toBe("Sales may fall by 12 % before debt cover is down to the lender's line of 1.25");
    expect(summary).toContain('Sales may fall by 31 % before debt cover is down to 1.00');
    expect(summary).toMatch(/Failing pumps cost \$[\d,.]+ in a mean year, \$[\d,.]+ or more in one year of twenty/);
  });

  it('has the line on its axis', () => {
    expect(view.ticks.at(-1)).toBeGreaterThanOrEqual(1.25);
    expect(view.ticks[0]).toBeLessThanOrEqual(Math.min(0, ...view.rows.map((row) => row.cover ?? 0)));
  });

  it('says it plainly when the plan is below the line, above it whatever comes, or owes nothing', () => {
    const findingOf = (untilLine: ScenarioRisk['untilLine']) => stressView({ ...RISK, untilLine }, 1.25, SHOWN).finding;
    expect(findingOf({ kind: 'alreadyBelow', lowestCover: 0.9 })).toBe(
      "Debt cover is below the lender's line of 1.25 even as planned: 0.90 in the worst twelve months",
    );
    expect(findingOf({ kind: 'never', lowestCover: 2 })).toContain('even without any sales');
    expect(findingOf({ kind: 'noDebt' })).toBe('There is no loan to be covered');
    expect(findingOf({ kind: 'notConverged', revenueFall: 0.2 })).toContain('about 20 %');
  });
});
