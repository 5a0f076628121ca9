import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { fittedRows } from '../../../lib/views/batch-log/fitted-rows.ts';
import { sampleCalibration, sampleValue } from './sample-calibration.ts';

const US = { system: 'us', currency: 'USD' } as const;

function rows(...values: ReturnType<typeof sampleValue>[]) {
  return fittedRows(DEMO_PLAN, US, sampleCalibration({ values }));
}

describe('fittedRows', () => {
  it('shows a value before and after with its range, in three digits', () => {
    expect(rows(sampleValue())[0]).toMatchObject({
      owner: 'Strawberry slices',
      label: 'Rate of the last drying',
      before: '60.0',
      believed: '30.0 to 119',
      after: '41.7',
      range: '32.1 to 54.3',
      toldBy: '7 batches',
      verdict: 'Told by the log.',
      advice: '',
      isUsed: true,
    });
  });

  it('writes tiny values by their power of ten', () => {
    const tiny = { value: 1.13e-8, low: 8.07e-9, high: 1.59e-8 };
    const [row] = rows(sampleValue({ key: 'permeability', before: 1.5e-8, after: tiny }));
    expect(row).toMatchObject({ before: '1.50 × 10⁻⁸', after: '1.13 × 10⁻⁸', range: '8.07 × 10⁻⁹ to 1.59 × 10⁻⁸' });
  });

  it('says what would tell a value better, with a weight a scale can show', () => {
    const next = { chamber: 'mid', product: 'bean-soup', wet: 14.97, loadFactor: 1.5, narrowsTo: 0.85 };
    const partner = { list: 'chambers', id: 'mid', key: 'heatContact' } as const;
    const [row] = rows(sampleValue({ verdict: 'together', partner, next }));
    expect(row?.verdict).toBe('Told only together with "Heat by contact" of Mid-size chamber.');
    expect(row?.advice).toBe(
      'Dry 33.0 lb of Bean and ham soup (one and a half times the usual load) and log it: the range would shrink to 85 %.',
    );
  });

  it('has chambers first, and keeps out what the log does not tell', () => {
    const leak = sampleValue({ list: 'chambers', id: 'mid', key: 'leak', from: 'riseTests', count: 1 });
    const found = rows(sampleValue({ verdict: 'undetermined' }), leak);
    expect(found.map(({ owner, isUsed }) => [owner, isUsed])).toEqual([
      ['Mid-size chamber', true],
      ['Strawberry slices', false],
    ]);
    expect(found[0]?.toldBy).toBe('1 pressure-rise test');
    expect(found[1]?.verdict).toContain('stays as believed');
  });
});
