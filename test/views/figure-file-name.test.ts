import { describe, expect, it } from 'vitest';
import { figureFileName } from '../../lib/views/figure-file-name.ts';

describe('figureFileName', () => {
  it.each([
    ['Payback', 'Four on one pump', 'payback-four-on-one-pump'],
    ['Where a batch’s hours go', '', 'where-a-batch-s-hours-go'],
    ['Spread', 'Größer / später: 2', 'spread-gro-er-spater-2'],
    ['', '…', 'figure'],
  ])('%s, %s', (figure, scenario, name) => {
    expect(figureFileName(figure, scenario)).toBe(name);
  });

  it('is never long', () => {
    expect(figureFileName('x'.repeat(50), 'y'.repeat(50)).length).toBeLessThanOrEqual(60);
  });
});
