import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pumpLaw, pumpSpeed } from '../../lib/physics/pump-speed.ts';
import { type ChamberRates, chamberRatesRecord } from '../../lib/plant/chamber-rates.ts';
import { pumpGroup } from '../../lib/plant/group-state.ts';
import { type ManifoldBalance, type ManifoldPort, manifoldPort, manifoldPressure } from '../../lib/plant/manifold.ts';
import type { PumpSpec } from '../../lib/plant/types.ts';
import { GOOD_PUMP, UNIT } from './sample-shop.ts';

interface End {
  readonly pressure: number;
  readonly gas: number;
  readonly open: boolean;
}

interface Settled {
  readonly pressure: number;
  readonly ports: readonly ManifoldPort[];
  readonly balance: ManifoldBalance;
}

function settle(ends: readonly End[], pump: PumpSpec = GOOD_PUMP): Settled {
  const group = pumpGroup({ pump, chambers: ends.map(() => UNIT) });
  const chambers: ChamberRates[] = ends.map(({ pressure, gas }) => ({ ...chamberRatesRecord(), pressure, gas }));
  const ports = ends.map(({ open }) => ({ ...manifoldPort(), open }));
  const balance = { surplus: 0, slope: 0, gasShare: 1 };
  return { pressure: manifoldPressure(group, chambers, ports, balance), ports, balance };
}

const open = (pressure: number, gas = 0.2 * pressure): End => ({ pressure, gas, open: true });

function total(settled: Settled): number {
  return settled.ports.reduce((sum, port) => sum + port.throughput, 0);
}

describe('the manifold', () => {
  it('stands where the pump takes what the hoses bring', () => {
    const settled = settle([open(80), open(60), open(75)]);
    const taken = pumpSpeed(pumpLaw(GOOD_PUMP), settled.pressure) * settled.pressure;
    expect(total(settled) / taken).toBeCloseTo(1, 5);
    expect(settled.pressure).toBeLessThan(80);
  });

  it('lies below a lone chamber and rises with every neighbour', () => {
    const pressures = [1, 2, 4, 6].map((count) => settle(Array.from({ length: count }, () => open(80))).pressure);
    expect(pressures[0]).toBeLessThan(80);
    expect([...pressures].sort((a, b) => a - b)).toEqual(pressures);
  });

  it('lets a chamber at higher pressure push into one at lower', () => {
    const { ports, pressure } = settle([open(300), open(20)]);
    expect(pressure).toBeGreaterThan(20);
    expect(ports[0]?.throughput).toBeGreaterThan(0);
    expect(ports[1]?.throughput).toBeLessThan(0);
  });

  it('carries the mixture of what flows in', () => {
    const { balance, ports } = settle([open(300, 30), open(290, 145), open(10, 10)]);
    const [first = 0, second = 0] = ports.map((port) => port.throughput);
    expect(second).toBeGreaterThan(0);
    expect(balance.gasShare).toBeCloseTo((first * 0.1 + second * 0.5) / (first + second), 9);
  });

  it('is not there when every valve is shut, and a shut valve passes nothing', () => {
    const shut: End = { ...open(80), open: false };
    expect(settle([shut, shut]).pressure).toBe(0);
    const { ports, pressure } = settle([open(60), { ...open(500), open: false }]);
    expect(ports[1]?.throughput).toBe(0);
    expect(pressure).toBeCloseTo(settle([open(60)]).pressure, 6);
  });

  it('takes a pump by its measured table too', () => {
    const table = [
      { pressure: 5, speed: 0.001 },
      { pressure: 50, speed: 0.003 },
      { pressure: 500, speed: 0.004 },
    ];
    const measured = { ...GOOD_PUMP, table };
    const settled = settle([open(80), open(70)], measured);
    const taken = pumpSpeed(pumpLaw(measured), settled.pressure) * settled.pressure;
    expect(total(settled) / taken).toBeCloseTo(1, 5);
    expect(settled.pressure).toBeGreaterThan(settle([open(80), open(70)]).pressure);
  });

  it('has one answer between the lowest and the highest pressure around, whatever they are', () => {
    const end = fc
      .tuple(fc.double({ min: 0.01, max: 2e5, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }))
      .map(([pressure, share]) => open(pressure, share * pressure));
    fc.assert(
      fc.property(fc.array(end, { minLength: 1, maxLength: 6 }), (ends) => {
        const settled = settle(ends);
        const pressures = ends.map((each) => each.pressure);
        expect(settled.pressure).toBeLessThanOrEqual(Math.max(...pressures) * (1 + 1e-9));
        expect(settled.pressure).toBeGreaterThanOrEqual(Math.min(GOOD_PUMP.ultimate, ...pressures) * (1 - 1e-9));
        expect(settled.balance.gasShare).toBeGreaterThanOrEqual(0);
        expect(settled.balance.gasShare).toBeLessThanOrEqual(1 + 1e-12);
      }),
    );
  });
});
