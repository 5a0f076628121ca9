import { defaultValues } from '../../inputs/default-values.ts';
import type { Crew, Financing, Site } from '../plan-types.ts';
import { given } from './given.ts';

const WEEKDAYS = [0, 1, 2, 3, 4];

/** An invented shop in an invented place. */
export const DEMO_SITE: Site = {
  ...defaultValues('site'),
  shopName: 'Pellowick Dry Larder',
  place: 'Pellowick, an invented town',
  currency: 'USD',
  unitSystem: 'us',
  electricityPrice: given(0.14, 'money/kWh', 'measured', { low: 0.12, high: 0.19, note: "Last year's bills" }),
  demandCharge: given(9, 'money/kW', 'measured', { note: "Last year's bills" }),
  electricityFixed: given(35, 'money/month', 'measured', { note: "Last year's bills" }),
  priceBands: [
    {
      id: 'evening',
      name: 'Weekday evenings',
      weekdays: WEEKDAYS,
      start: 16,
      end: 20,
      price: given(0.21, 'money/kWh', 'quoted', { note: 'Tariff sheet' }),
    },
    {
      id: 'night',
      name: 'Nights',
      weekdays: [0, 1, 2, 3, 4, 5, 6],
      start: 23,
      end: 6,
      price: given(0.11, 'money/kWh', 'quoted', { note: 'Tariff sheet' }),
    },
  ],
  supplyCurrent: given(125, 'A', 'measured'),
  panelCircuits: given(8, '', 'measured'),
  floorSpace: given(22, 'm²', 'guess', { note: 'Paced out, the aisle left free' }),
  rentAndFixed: given(1150, 'money/month', 'measured'),
  electricalPerChamber: given(850, 'money', 'quoted', { low: 700, high: 1400 }),
  manifoldPerChamber: given(280, 'money', 'guess', { low: 200, high: 450 }),
};

export const DEMO_CREW: Crew = {
  ...defaultValues('crew'),
  loadPerBatch: given(20, 'min', 'measured'),
  loadPerKilogram: given(1.6, 'min/kg', 'measured', { low: 1.3, high: 2.2 }),
  unloadPerBatch: given(12, 'min', 'measured'),
  unloadPerKilogram: given(1.2, 'min/kg', 'measured', { low: 1, high: 1.8 }),
  cleanPerBatch: given(25, 'min', 'measured'),
  cleanPerKilogram: given(0.2, 'min/kg', 'guess'),
  patterns: [
    { id: 'days', name: 'Weekday days', shifts: [{ weekdays: WEEKDAYS, start: 7, end: 15.5, people: 1 }] },
    {
      id: 'two-shifts',
      name: 'Two shifts and Saturday',
      shifts: [
        { weekdays: WEEKDAYS, start: 6, end: 14, people: 2 },
        { weekdays: WEEKDAYS, start: 14, end: 22, people: 1 },
        { weekdays: [5], start: 8, end: 14, people: 1 },
      ],
    },
  ],
};

export const DEMO_FINANCING: Financing = {
  ...defaultValues('financing'),
  openingCash: given(9000, 'money', 'measured'),
  receivableDays: given(6, 'd', 'measured', { note: 'Two shops pay by the month, the rest at the stall' }),
  stockDays: given(30, 'd', 'guess', { low: 20, high: 50 }),
  payableDays: given(14, 'd', 'quoted'),
  loans: [
    {
      ...defaultValues('loan'),
      id: 'bank',
      name: 'Bank loan',
      rate: given(10.5, '%/year', 'quoted', { low: 9.5, high: 13 }),
      interestOnlyMonths: given(3, 'month', 'quoted'),
      fee: given(2, '%', 'quoted'),
    },
    {
      ...defaultValues('loan'),
      id: 'first-chambers',
      name: 'Loan on the first two chambers',
      basis: 'running',
      amount: given(12800, 'money', 'measured', { note: 'Last statement' }),
      rate: given(9, '%/year', 'measured'),
      term: given(50, 'month', 'measured'),
    },
  ],
};
