import { describe, expect, it } from 'vitest';
import type { BatchRecord } from '../../lib/plant/report-types.ts';
import { batchHoursView } from '../../lib/views/batch-hours-view.ts';
import { SAMPLE_PLANT, sampleView } from './sample-result.ts';

const HOUR = 3600;

function batch(phases: BatchRecord['phases']): BatchRecord {
  return {
    chamber: 0,
    productId: 'a',
    start: 0,
    phases,
    wetIn: 10,
    dryOut: 2,
    waterIn: 8,
    waterOnTrap: 8,
    waterThroughPump: 0,
    waterLeft: 0,
    iceOnTrap: 8,
    pressurePeak: 50,
    pressureMean: 40,
  };
}

const VIEW = sampleView('Six', 1, {
  plant: {
    batches: 2,
    batchRecords: [
      batch({ loading: 1 * HOUR, primary: 8 * HOUR, secondary: 4 * HOUR, hold: 7 * HOUR }),
      batch({ loading: 1 * HOUR, primary: 10 * HOUR, secondary: 4 * HOUR, hold: 5 * HOUR }),
    ],
    limits: { ...SAMPLE_PLANT.limits, shelfTemperature: 6 * HOUR, ceilingByGas: 12 * HOUR, desorption: 8 * HOUR },
  },
});

describe('batchHoursView', () => {
  it('takes the mean over the finished batches, phase by phase', () => {
    const [row] = batchHoursView([VIEW], 's1', 'phase').rows;
    expect(row?.hours).toEqual({ hands: 1, primary: 9, secondary: 4, waitingForPeople: 6 });
    expect(row?.total).toBe(20);
  });

  it('heads the phases with drying and the longest wait', () => {
    expect(batchHoursView([VIEW], 's1', 'phase').finding).toBe(
      'A batch takes 20 hours, of which it dries 65 % and spends 30 % waiting for people',
    );
  });

  it('puts the hours of drying to what holds them back, per batch of the week', () => {
    const view = batchHoursView([VIEW], 's1', 'limit');
    expect(view.rows[0]?.hours).toMatchObject({ shelfTemperature: 3, ceilingByGas: 6, desorption: 4 });
    expect(view.finding).toBe('Drying is held back most by gas that the pump has not taken away: 46 % of its hours');
    expect(view.parts.map((part) => part.key)).toEqual(['shelfTemperature', 'ceilingByGas', 'desorption']);
  });

  it('gives table and saved numbers the same hours', () => {
    const view = batchHoursView([VIEW], 's1', 'phase');
    expect(view.table.rows[0]?.at(-1)).toBe('20.0');
    expect(view.series.rows[0]?.at(-1)).toBe(20);
    expect(view.series.head).toHaveLength(view.series.rows[0]?.length ?? 0);
  });

  it('stands without any batch', () => {
    const empty = sampleView('None', 1, { plant: { batches: 0, batchRecords: [] } });
    expect(batchHoursView([empty], 's1', 'phase').finding).toBe('Where a batch’s hours go');
  });
});
