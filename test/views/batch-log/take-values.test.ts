import { describe, expect, it } from 'vitest';
import { applyCommand } from '../../../lib/plan/commands/apply-command.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { FITTED_SOURCE } from '../../../lib/plan/fitted-source.ts';
import type { Plan } from '../../../lib/plan/plan-types.ts';
import { holdsValues, takeValuesGesture } from '../../../lib/views/batch-log/take-values.ts';
import { sampleCalibration, sampleValue } from './sample-calibration.ts';

const leak = { value: 0.035, low: 0.029, high: 0.041 };
const calibration = sampleCalibration({
  values: [
    sampleValue(),
    sampleValue({ list: 'chambers', id: 'mid', key: 'leak', from: 'riseTests', count: 3, after: leak }),
    sampleValue({ key: 'permeability', verdict: 'undetermined' }),
  ],
});

function taken(): Plan {
  const gesture = takeValuesGesture(DEMO_PLAN, calibration);
  if (!gesture) throw new Error('nothing to take');
  const applied = applyCommand(DEMO_PLAN, gesture.command);
  if (!applied.ok) throw new Error(JSON.stringify(applied.error));
  return applied.value;
}

describe('takeValuesGesture', () => {
  it('writes what the log tells, as measured and with its range, in one command', () => {
    const plan = taken();
    const strawberries = plan.products.find(({ id }) => id === 'strawberries');
    expect(strawberries?.desorptionRate).toMatchObject({
      value: 41.73,
      low: 32.1,
      high: 54.3,
      origin: 'measured',
      source: FITTED_SOURCE,
      note: 'From 7 batches.',
    });
    expect(plan.chambers.find(({ id }) => id === 'mid')?.leak).toMatchObject({
      value: 0.035,
      origin: 'measured',
      note: 'From 3 pressure-rise tests.',
    });
    expect(takeValuesGesture(DEMO_PLAN, calibration)?.said).toContain('2 values of chambers and products now come');
  });

  it('leaves all else as it was, what the log does not tell included', () => {
    const plan = taken();
    expect(plan.products.find(({ id }) => id === 'strawberries')?.permeability).toEqual(
      DEMO_PLAN.products.find(({ id }) => id === 'strawberries')?.permeability,
    );
    expect(plan.scenarios).toEqual(DEMO_PLAN.scenarios);
    expect(plan.batchLog).toEqual(DEMO_PLAN.batchLog);
  });

  it('knows a plan that holds the values, and one that does not', () => {
    expect(holdsValues(DEMO_PLAN, calibration)).toBe(false);
    expect(holdsValues(taken(), calibration)).toBe(true);
  });

  it('has nothing to offer where the log tells nothing', () => {
    const silent = sampleCalibration({ values: [sampleValue({ verdict: 'undetermined' })] });
    expect(takeValuesGesture(DEMO_PLAN, silent)).toBeNull();
    expect(holdsValues(DEMO_PLAN, silent)).toBe(false);
  });
});
