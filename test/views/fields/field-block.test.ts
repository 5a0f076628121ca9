import { describe, expect, it } from 'vitest';
import { fieldsOf, keyOf } from '../../../lib/inputs/register.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { blockOf, cellIn, stateOf } from './demo-blocks.ts';

const STATE = stateOf(DEMO_PLAN);
const SI = stateOf({ ...DEMO_PLAN, site: { ...DEMO_PLAN.site, unitSystem: 'si' } });

describe('blocks of fields', () => {
  it.each(['chamber', 'pump', 'hose', 'product'] as const)('every input of %s has its row', (section) => {
    const keys = blockOf(STATE, `${section}s`).grid.rows.map((row) => row.key);
    expect(keys).toEqual(['name', ...fieldsOf(section).map(keyOf)]);
  });

  it('lists inside a part come by themselves', () => {
    expect(blockOf(STATE, 'financing.loans').grid.columns.map((line) => line.label)).toEqual([
      'Bank loan',
      'Loan on the first two chambers',
    ]);
    const shifts = blockOf(STATE, 'crew.patterns.@two-shifts.shifts');
    expect(shifts.title).toBe('Shifts: Two shifts and Saturday');
    expect(shifts.grid.columns.map((line) => line.label)).toEqual(['Days', 'Starts', 'Ends', 'People']);
    expect(shifts.grid.cells[2]?.map((cell) => cell.text)).toEqual(['Sat', '8', '14', '1']);
  });

  it.each([
    ['chambers.@mid.pressureCeiling', '650', 'mTorr', '86.66', 'Pa'],
    ['hoses.@thin.length', '6.562', 'ft', '2', 'm'],
    ['hoses.@thin.diameter', '0.9843', 'in', '25', 'mm'],
    ['products.@strawberries.price', '50.8', '$/lb', '112', '$/kg'],
    ['products.@strawberries.water', '89.97', '%', '89.97', '%'],
    ['products.@strawberries.permeability', '2e-8', 's', '2e-8', 's'],
    ['products.@strawberries.initialFreezing', '30.56', '°F', '−0.8', '°C'],
    ['crew.loadPerBatch', '20', 'min', '20', 'min'],
    ['chambers.@mid.usefulLife', '10', 'years', '10', 'years'],
    ['chambers.@mid.price', '21,500', '$', '21,500', '$'],
  ])('%s is shown in either system of units', (place, us, usUnit, si, siUnit) => {
    const [american, metric] = [cellIn(STATE, place), cellIn(SI, place)];
    expect([american.text, american.look.unit]).toEqual([us, usUnit]);
    expect([metric.text, metric.look.unit]).toEqual([si, siUnit]);
  });

  it('tells where each figure came from', () => {
    expect(cellIn(STATE, 'pumps.@small.vapourTolerance').origin).toBe('guess');
    expect(cellIn(STATE, 'pumps.@small.name').origin).toBeNull();
  });
});
