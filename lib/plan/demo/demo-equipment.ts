import { defaultValues } from '../../inputs/default-values.ts';
import type { ChamberType, Freezer, HoseType, PumpType } from '../plan-types.ts';
import { given } from './given.ts';

/** An invented machine; what a name plate or a first batch would tell counts as quoted or measured. */
export const DEMO_CHAMBERS: readonly ChamberType[] = [
  {
    ...defaultValues('chamber'),
    id: 'mid',
    name: 'Mid-size chamber',
    shelfArea: given(1.5, 'm²', 'measured'),
    heaterPower: given(2, 'kW', 'quoted'),
    shelfLimit: given(65, '°C', 'quoted'),
    pressureCeiling: given(650, 'mTorr', 'quoted'),
    leak: given(0.03, 'Pa·m³/s', 'measured', { low: 0.02, high: 0.04, note: 'Pressure-rise test with the valve shut' }),
    trapCapacity: given(16, 'kg', 'quoted'),
    trapVapourConductance: given(1.5e-5, 'kg/(s·Pa)', 'guess', { low: 1e-5, high: 3e-5 }),
    ratedCurrent: given(16, 'A', 'quoted'),
    circuitRating: given(20, 'A', 'measured'),
    age: given(2, 'year', 'measured'),
    price: given(21500, 'money', 'quoted', { low: 20000, high: 24500 }),
  },
  {
    ...defaultValues('chamber'),
    id: 'large',
    name: 'Large chamber',
    shelfArea: given(3, 'm²', 'quoted'),
    volume: given(480, 'L', 'quoted'),
    floorSpace: given(3.8, 'm²', 'guess'),
    leak: given(0.015, 'Pa·m³/s', 'guess', { low: 0.008, high: 0.04 }),
    outgassing: given(38, 'Pa·m³', 'guess'),
    heaterPower: given(4, 'kW', 'quoted'),
    trapArea: given(2.4, 'm²', 'quoted'),
    trapCapacity: given(32, 'kg', 'quoted'),
    trapParasiticLoad: given(260, 'W', 'guess'),
    trapRatedLoad: given(3200, 'W', 'quoted'),
    trapVapourConductance: given(3e-5, 'kg/(s·Pa)', 'guess', { low: 2e-5, high: 6e-5 }),
    compressorPower: given(2.1, 'kW', 'quoted'),
    defrostPower: given(1.8, 'kW', 'quoted'),
    ratedCurrent: given(30, 'A', 'quoted'),
    circuitRating: given(40, 'A', 'quoted'),
    price: given(32000, 'money', 'quoted', { low: 30000, high: 37000 }),
    installation: given(1600, 'money', 'guess'),
    maintenance: given(700, 'money/year', 'guess'),
  },
];

export const DEMO_PUMPS: readonly PumpType[] = [
  {
    ...defaultValues('pump'),
    id: 'small',
    name: 'Small pump',
    speed: given(5, 'm³/h', 'quoted'),
    ultimate: given(5, 'Pa', 'measured', { note: 'With the oil as it is after a few batches' }),
    vapourTolerance: given(0.06, 'kg/h', 'guess'),
    power: given(370, 'W', 'quoted'),
    price: given(900, 'money', 'quoted'),
    usefulLife: given(4, 'year', 'guess'),
    salvage: given(0, '%', 'guess'),
    age: given(2, 'year', 'measured'),
    oilVolume: given(0.7, 'L', 'measured'),
    oilLifeHours: given(120, 'h', 'measured'),
    oilLifeWater: given(2, 'kg', 'guess', { low: 1, high: 4 }),
    filterCost: given(8, 'money', 'quoted'),
    rebuildInterval: given(5000, 'h', 'guess'),
    rebuildCost: given(280, 'money', 'quoted'),
    failuresPerYear: given(0.5, '1/year', 'guess', { low: 0.2, high: 1 }),
    repairTime: given(4, 'd', 'guess', { low: 2, high: 9 }),
    repairBill: given(250, 'money', 'guess'),
    speedTable: [],
  },
  {
    ...defaultValues('pump'),
    id: 'good',
    name: 'Good pump with gas ballast',
    speed: given(12, 'm³/h', 'quoted'),
    ultimate: given(0.5, 'Pa', 'quoted'),
    vapourTolerance: given(0.25, 'kg/h', 'quoted'),
    price: given(3400, 'money', 'quoted', { low: 3200, high: 3900 }),
    failuresPerYear: given(0.25, '1/year', 'guess', { low: 0.1, high: 0.6 }),
    speedTable: [],
  },
];

export const DEMO_HOSES: readonly HoseType[] = [
  {
    ...defaultValues('hose'),
    id: 'thin',
    name: 'Thin hose',
    diameter: given(25, 'mm', 'measured'),
    length: given(2, 'm', 'measured'),
    price: given(70, 'money', 'quoted'),
  },
  {
    ...defaultValues('hose'),
    id: 'wide',
    name: 'Wide hose to the manifold',
    diameter: given(40, 'mm', 'quoted'),
    length: given(3.5, 'm', 'measured', { note: 'Two bends and a valve counted in' }),
    price: given(160, 'money', 'quoted'),
  },
];

export const DEMO_FREEZER: Freezer = {
  ...defaultValues('freezer'),
  temperature: given(-26, '°C', 'measured'),
  capacity: given(70, 'kg', 'quoted'),
  age: given(3, 'year', 'measured'),
};
