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
  supplyCurrent: given(125, 'A', 'measured'),
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
  loanRate: given(10.5, '%/year', 'quoted', { low: 9.5, high: 13 }),
  loanTerm: given(84, 'month', 'quoted'),
  fee: given(2, '%', 'quoted'),
  existingDebtService: given(310, 'money/month', 'measured', { note: 'Loan on the first two chambers' }),
};
