import { defaultValues } from '../../inputs/default-values.ts';
import { inBase } from '../../inputs/quantity.ts';
import { LIMITS } from '../limits.ts';
import type { Crew, Plan } from '../plan-types.ts';
import { PLAN_FORMAT, PLAN_VERSION } from '../schema.ts';
import type { OwnAnswers } from './own-answers.ts';
import { OWN_HOSE, ownChamber, ownPump } from './own-equipment.ts';
import { ownProducts } from './own-products.ts';
import { ownScenarios } from './own-scenarios.ts';

const WORKDAYS = [0, 1, 2, 3, 4];
const ALL_DAYS = [0, 1, 2, 3, 4, 5, 6];

/** Patterns to choose from; all stay in the plan, so that a scenario can try another. Their ids are those of `OwnHours`. */
const PATTERNS: Crew['patterns'] = [
  { id: 'days', name: 'Weekday days', shifts: [{ weekdays: WORKDAYS, start: 8, end: 16.5, people: 1 }] },
  { id: 'long-days', name: 'Long weekdays', shifts: [{ weekdays: WORKDAYS, start: 7, end: 20, people: 1 }] },
  { id: 'every-day', name: 'Every day', shifts: [{ weekdays: ALL_DAYS, start: 8, end: 18, people: 1 }] },
  {
    id: 'two-shifts',
    name: 'Two shifts',
    shifts: [
      { weekdays: WORKDAYS, start: 6, end: 14, people: 1 },
      { weekdays: WORKDAYS, start: 14, end: 22, people: 1 },
    ],
  },
];

function wholeChambers(chambers: number): number {
  return Math.min(LIMITS.chambersInScenario, Math.max(1, Math.round(chambers)));
}

/**
 * A plan of one's own from a few answers. What was told is kept as told; all else is the usual value or guessed from the
 * size of the chambers, and says so. Amounts outside what a plan may hold are brought to its edge.
 */
export function ownPlan(answers: OwnAnswers): Plan {
  const { currency, unitSystem, pump } = answers;
  const chambers = wholeChambers(answers.chambers);
  const chamber = ownChamber(answers);
  const area = inBase(chamber.shelfArea, 'area');
  const products = ownProducts(answers);
  return {
    format: PLAN_FORMAT,
    version: PLAN_VERSION,
    name: 'My plan',
    site: { ...defaultValues('site'), shopName: 'My shop', place: '', currency, unitSystem, priceBands: [] },
    crew: { ...defaultValues('crew'), patterns: PATTERNS },
    freezer: null,
    financing: {
      ...defaultValues('financing'),
      loans: [{ ...defaultValues('loan'), id: 'bank', name: 'Bank loan' }],
    },
    products,
    chambers: [chamber],
    pumps: [
      ownPump('pump', 'Pump', pump === 'shared' ? area * chambers : area),
      ownPump('larger-pump', 'Larger pump', area * chambers * 2),
    ],
    hoses: [OWN_HOSE],
    scenarios: ownScenarios(answers, chambers, products),
    batchLog: [],
  };
}
