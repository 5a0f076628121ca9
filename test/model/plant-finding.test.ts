import { describe, expect, it } from 'vitest';
import { plantFinding } from '../../lib/model/plant-finding.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { fieldAtPath } from '../../lib/plan/field-at-path.ts';
import type { Scenario } from '../../lib/plan/plan-types.ts';
import type { PlantProblem } from '../../lib/plant/report-types.ts';

const SIX = DEMO_PLAN.scenarios[3] as Scenario;

/** One problem of each kind, with the entry it lies in and what its words must tell. */
const PROBLEMS: {
  readonly [Kind in PlantProblem['kind']]: readonly [Extract<PlantProblem, { kind: Kind }>, string, readonly string[]];
} = {
  trapOverfill: [
    { kind: 'trapOverfill', productId: 'sweetcorn', chamber: 'Mid-size chamber', water: 19.44, capacity: 16 },
    'products.1.load',
    ['Sweetcorn', 'Mid-size chamber', '19.4 kg', '16.0 kg'],
  ],
  pumpCannotReach: [
    { kind: 'pumpCannotReach', pump: 'Good pump with gas ballast', pressure: 86.66, reached: 133.3224 },
    'pumps.1.speed',
    ['Good pump with gas ballast', '133 Pa (1000 mTorr)', '86.7 Pa (650 mTorr)'],
  ],
  dryingStalls: [
    { kind: 'dryingStalls', productId: 'bean-soup', chamber: 'Mid-size chamber', reason: 'ceilingByGas' },
    'products.2.shelfPrimary',
    ['Bean and ham soup', 'Mid-size chamber', 'ten days'],
  ],
  neverDry: [
    { kind: 'neverDry', productId: 'puffed-candy', chamber: 'Mid-size chamber' },
    'products.3.targetMoisture',
    ['Puffed taffy'],
  ],
  nobodyCanDo: [
    { kind: 'nobodyCanDo', task: 'unload', needed: 9.25 * 3600, longestShift: 8 * 3600 },
    'crew.patterns.1.shifts',
    ['Unloading', '9.3 h', '8.0 h'],
  ],
  freezingImpossible: [
    { kind: 'freezingImpossible', productId: 'strawberries', chamber: 'Large chamber' },
    'products.0.frozenLimit',
    ['Strawberry slices', 'Large chamber'],
  ],
  freezerTooSmall: [
    { kind: 'freezerTooSmall', productId: 'bean-soup', load: 81, capacity: 70 },
    'freezer.capacity',
    ['Bean and ham soup', '81.0 kg', '70.0 kg'],
  ],
  cannotFollow: [
    { kind: 'cannotFollow', pump: 'Good pump with gas ballast' },
    'pumps.1.speed',
    ['Good pump with gas ballast', 'faster than can be followed'],
  ],
  nothingToMake: [{ kind: 'nothingToMake' }, 'scenarios.3.mix', ['no product']],
};

const CASES = Object.values(PROBLEMS);

describe('plantFinding', () => {
  it.each(CASES)('puts $kind into words', (problem, field, words) => {
    const found = plantFinding(DEMO_PLAN, SIX, problem);
    expect(found.severity).toBe('error');
    expect(found.field).toBe(field);
    expect(found.value).not.toBe('');
    for (const word of words) expect(found.problem).toContain(word);
    expect(found.problem).toMatch(/\.$/);
    expect(found.remedy).toMatch(/^[A-Z].*\.$/);
    expect(`${found.problem} ${found.remedy} ${found.value}`).not.toMatch(/undefined|NaN|\(missing\)/);
  });

  it.each(CASES)('points $kind at an entry that the plan has', (problem, field) => {
    const lists = ['crew.patterns.1.shifts', 'scenarios.3.mix'];
    expect(lists.includes(field) || fieldAtPath(plantFinding(DEMO_PLAN, SIX, problem).field) !== undefined).toBe(true);
  });

  it('shows the value as it was entered', () => {
    expect(plantFinding(DEMO_PLAN, SIX, PROBLEMS.trapOverfill[0]).value).toBe('7.5 kg/m²');
    expect(plantFinding(DEMO_PLAN, SIX, PROBLEMS.freezerTooSmall[0]).value).toBe('70 kg');
  });
});
