import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { pathOfPlace, valueAtPlace } from '../../lib/plan/place.ts';

describe('a place', () => {
  it.each([
    ['site.wage', null],
    ['site.shopName', 'site.shopName'],
    ['pumps.@good.speed', 'pumps.1.speed'],
    ['pumps.@gone.speed', null],
    ['pumps.good.speed', null],
    ['crew.patterns.@two-shifts.shifts.1.start', 'crew.patterns.1.shifts.1.start'],
    ['crew.patterns.@two-shifts.shifts.9.start', null],
    ['pumps.constructor', null],
    ['site.@x', null],
    ['', null],
  ])('%s leads to %s', (place, path) => {
    expect(pathOfPlace(DEMO_PLAN, place)).toBe(path);
  });

  it('follows an item that has moved', () => {
    const moved = { ...DEMO_PLAN, pumps: DEMO_PLAN.pumps.toReversed() };
    expect(pathOfPlace(moved, 'pumps.@good.speed')).toBe('pumps.0.speed');
    expect(valueAtPlace(moved, 'pumps.@good.name')).toBe('Good pump with gas ballast');
  });
});
