import { describe, expect, it } from 'vitest';
import { batchCostView, COST_PARTS } from '../../lib/views/batch-cost-view.ts';
import { sampleView } from './sample-result.ts';

const US = { system: 'us', currency: 'USD' } as const;

describe('batchCostView', () => {
  const views = [sampleView('Today', 0), sampleView('Six', 1, { cost: { labour: 65 } })];

  it('heads the figure with the cost of the chosen scenario and its largest part', () => {
    expect(batchCostView(views, 's0', US).finding).toBe('A batch costs $100, 40 % of it ingredients');
    expect(batchCostView(views, 's1', US).finding).toBe('A batch costs $140, 46 % of it labour');
  });

  it('stacks parts that add up to the total', () => {
    for (const row of batchCostView(views, 's0', US).rows) {
      expect(COST_PARTS.reduce((sum, part) => sum + row[part], 0)).toBeCloseTo(row.total, 10);
    }
  });

  it('gives the same figures as a table', () => {
    expect(batchCostView(views, 's0', US).table.rows[0]).toEqual(['Today', '40', '20', '25', '8', '2', '5', '100']);
  });

  it('has words for a scenario without figures', () => {
    expect(batchCostView(views, 'gone', US).finding).toBe('What a batch costs');
    expect(batchCostView([], 'gone', US).ticks.length).toBeGreaterThan(0);
  });
});
