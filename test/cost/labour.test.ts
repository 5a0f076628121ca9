import { describe, expect, it } from 'vitest';
import { type LabourTerms, labourCost } from '../../lib/cost/labour.ts';

const hour = 3600;
const crew: LabourTerms = {
  tasks: { load: 10 * hour, unload: 6 * hour, clean: 4 * hour },
  onShift: 40 * hour,
  wage: 18,
  onCost: 0.25,
  guaranteed: false,
  owner: { time: 5 * hour, rate: 30 },
};

describe('labourCost', () => {
  it('pays hired hands only for the work the owner leaves', () => {
    const cost = labourCost(crew);
    expect(cost.loadedWage).toBe(22.5);
    expect(cost.paid).toBeCloseTo(15 * 22.5, 9);
    expect(cost.idle).toBe(0);
    expect(cost.flexible).toBe(true);
    expect(Object.values(cost.byTask).reduce((sum, part) => sum + part, 0)).toBeCloseTo(cost.paid, 9);
  });

  it('pays guaranteed hours whether there is work or not, and says what was paid for waiting', () => {
    const cost = labourCost({ ...crew, guaranteed: true });
    expect(cost.paid).toBeCloseTo(35 * 22.5, 9);
    expect(cost.idle).toBeCloseTo(20 * 22.5, 9);
    expect(cost.flexible).toBe(false);
  });

  it('shows the owner apart, never among what is paid', () => {
    const cost = labourCost(crew);
    expect(cost.ownerUnpaid).toBeCloseTo(150, 9);
    expect(labourCost({ ...crew, owner: { time: 5 * hour, rate: 99 } }).paid).toBe(cost.paid);
  });

  it('pays no one when the owner does it all', () => {
    expect(labourCost({ ...crew, owner: { time: 50 * hour, rate: 30 } }).paid).toBe(0);
    expect(labourCost({ ...crew, tasks: {}, owner: { time: 0, rate: 0 } }).byTask).toEqual({});
  });

  it('pays for work beyond a guaranteed shift', () => {
    expect(labourCost({ ...crew, guaranteed: true, onShift: 10 * hour }).paidTime).toBe(15 * hour);
  });

  it('refuses negative times', () => {
    expect(() => labourCost({ ...crew, tasks: { load: -1 } })).toThrow(RangeError);
    expect(() => labourCost({ ...crew, owner: { time: -1, rate: 0 } })).toThrow(RangeError);
  });
});
