import { describe, expect, it } from 'vitest';
import { electricityCost, type Tariff } from '../../lib/cost/electricity.ts';
import { perMonth, perWeek, WEEKS_PER_MONTH } from '../../lib/cost/month-length.ts';
import { meanEnergyPrice, type TariffBand } from '../../lib/cost/tariff.ts';

const kilowattHour = 3.6e6;
const flat: Tariff = { energyPrice: 0.2, bands: [], demandCharge: 10, fixedPerMonth: 30 };
const even = new Array<number>(672).fill(1000);

describe('electricityCost', () => {
  it('adds energy, demand and fixed charge', () => {
    const cost = electricityCost({
      energy: { heaters: 100 * kilowattHour, pumps: 50 * kilowattHour },
      peakPower: 5000,
      profile: [],
      tariff: flat,
    });
    expect(cost.energy).toBeCloseTo(150, 9);
    expect(cost.byConsumer.heaters).toBeCloseTo(20, 9);
    expect(cost.byConsumer.pumps).toBeCloseTo(10, 9);
    expect(cost.energyCharge).toBeCloseTo(30, 9);
    expect(cost.demandCharge * WEEKS_PER_MONTH).toBeCloseTo(50, 9);
    expect(cost.fixedCharge * WEEKS_PER_MONTH).toBeCloseTo(30, 9);
    expect(cost.total).toBeCloseTo(cost.energyCharge + cost.demandCharge + cost.fixedCharge, 12);
  });

  it('prices energy by the hours it is used in', () => {
    const peak: TariffBand = { days: [0, 1, 2, 3, 4], startHour: 16, endHour: 20, price: 0.5 };
    const cost = electricityCost({
      energy: { pumps: 168 * kilowattHour },
      peakPower: 1000,
      profile: even,
      tariff: { ...flat, bands: [peak] },
    });
    expect(cost.energyCharge).toBeCloseTo(20 * 0.5 + 148 * 0.2, 9);
  });

  it('refuses negative amounts', () => {
    expect(() => electricityCost({ energy: { pumps: -1 }, peakPower: 0, profile: [], tariff: flat })).toThrow(
      RangeError,
    );
  });
});

describe('meanEnergyPrice', () => {
  it('lets a band run over midnight into the next day', () => {
    const night: TariffBand = { days: [6], startHour: 22, endHour: 6, price: 0.05 };
    const onlyMondayEarly = even.map((power, quarter) => (quarter < 24 ? power : 0));
    expect(meanEnergyPrice(onlyMondayEarly, 0.2, [night])).toBeCloseTo(0.05, 12);
    const onlyTuesdayEarly = even.map((power, quarter) => (quarter >= 96 && quarter < 120 ? power : 0));
    expect(meanEnergyPrice(onlyTuesdayEarly, 0.2, [night])).toBeCloseTo(0.2, 12);
  });

  it('takes the first band that matches', () => {
    const whole: TariffBand = { days: [0, 1, 2, 3, 4, 5, 6], startHour: 0, endHour: 24, price: 0.1 };
    expect(meanEnergyPrice(even, 0.2, [whole, { ...whole, price: 0.9 }])).toBeCloseTo(0.1, 12);
  });

  it('is the basic price when nothing is used, and wants a whole week', () => {
    const band: TariffBand = { days: [0], startHour: 0, endHour: 1, price: 1 };
    expect(meanEnergyPrice(new Array(672).fill(0), 0.2, [band])).toBe(0.2);
    expect(() => meanEnergyPrice([1], 0.2, [band])).toThrow(RangeError);
  });
});

describe('month length', () => {
  it('has 52.18 weeks to twelve months', () => {
    expect(12 * WEEKS_PER_MONTH).toBeCloseTo(365.25 / 7, 12);
    expect(perMonth(perWeek(7))).toBeCloseTo(7, 12);
  });
});
