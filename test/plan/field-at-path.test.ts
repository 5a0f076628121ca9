import { describe, expect, it } from 'vitest';
import { fieldsOf, keyOf, REGISTER, type Section } from '../../lib/inputs/register.ts';
import { fieldAtPath } from '../../lib/plan/field-at-path.ts';

const PLACES: Readonly<Record<Section, string>> = {
  chamber: 'chambers.3',
  pump: 'pumps.0',
  speedPoint: 'pumps.0.speedTable.4',
  hose: 'hoses.1',
  product: 'products.12',
  site: 'site',
  priceBand: 'site.priceBands.2',
  crew: 'crew',
  shift: 'crew.patterns.1.shifts.0',
  freezer: 'freezer',
  financing: 'financing',
  loan: 'financing.loans.1',
  scenario: 'scenarios.5',
  scenarioChamber: 'scenarios.5.chambers.0',
  mixShare: 'scenarios.0.mix.2',
  loggedBatch: 'batchLog.7',
  pressureRise: 'batchLog.7',
};

describe('fieldAtPath', () => {
  it.each(Object.keys(REGISTER) as Section[])('finds every row of %s where the plan keeps it', (section) => {
    for (const row of fieldsOf(section)) expect(fieldAtPath(`${PLACES[section]}.${keyOf(row)}`)).toBe(row);
  });

  it.each([
    '',
    'name',
    'products',
    'products.0',
    'products.0.nothing',
    'products.x.load',
    '__proto__.load',
    'constructor.name',
  ])('finds no row at %j', (path) => {
    expect(fieldAtPath(path)).toBeUndefined();
  });
});
