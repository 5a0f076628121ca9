import type { Calibration, ComparedBatch, FittedValue } from '../../../lib/insight/calibration/calibration.ts';

const HOUR = 3600;

/** A fitted value of the demo plan: what dries strawberries at the end, told by seven batches. */
export function sampleValue(change: Partial<FittedValue> = {}): FittedValue {
  return {
    list: 'products',
    id: 'strawberries',
    key: 'desorptionRate',
    from: 'hours',
    count: 7,
    before: 60,
    believed: { value: 60, low: 30, high: 119 },
    after: { value: 41.73456, low: 32.1, high: 54.3 },
    narrowed: 0.4,
    moved: -1,
    verdict: 'determined',
    partner: null,
    next: null,
    ...change,
  };
}

export function sampleBatch(id: string, hours: number, before: number, after: number, use: ComparedBatch['use']) {
  const rest = { date: '2026-09-01', chamber: 'mid', product: 'strawberries', wet: 10 };
  return { id, ...rest, time: hours * HOUR, before: before * HOUR, after: after * HOUR, use } satisfies ComparedBatch;
}

export function sampleCalibration(change: Partial<Calibration> = {}): Calibration {
  return {
    batches: [sampleBatch('a', 20, 16, 19.5, 'fitted'), sampleBatch('b', 18, 15, 18.2, 'fitted')],
    values: [sampleValue()],
    contradictions: [],
    untested: [],
    levellingOff: [],
    miss: { before: 0.18, after: 0.035 },
    scatter: 0.046,
    converged: true,
    dryings: 10,
    ...change,
  };
}
