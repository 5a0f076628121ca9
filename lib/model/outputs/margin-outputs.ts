import type { ScenarioResult } from '../scenario-result.ts';
import { bestMixGainWorking, worthOfHourWorking } from '../workings/best-mix-workings.ts';
import {
  loansBreakEvenWorking,
  marginOfSafetyWorking,
  operatingBreakEvenWorking,
  perHourWorking,
  profitOwnerPaidWorking,
  profitWorking,
} from '../workings/margin-workings.ts';
import type { OutputField } from './output-field.ts';

/** Resources of which an hour can be sold, by their name in the accounts. */
const HOURS = ['chambers', 'pump', 'crew'] as const;

type HourResource = (typeof HOURS)[number];

function perHour({ account }: ScenarioResult, name: HourResource): number | null {
  return account.week.contributionPerHour[name] ?? null;
}

/** The resource that is used hardest; the first of equals. */
function busiest({ plant }: ScenarioResult): HourResource {
  return HOURS.reduce((most, name) => (plant.utilisation[name] > plant.utilisation[most] ? name : most));
}

/** What failing pumps take in a mean week beyond machines that stand idle [money/week]. */
function failuresPerWeek({ failures }: ScenarioResult): number {
  return (failures.cost.spoiled + failures.cost.repairs) / (365.25 / 7);
}

/** Left in a normal week when everything that the shop pays is paid. */
function profit(result: ScenarioResult): number {
  return result.account.week.profit - failuresPerWeek(result);
}

/** What is left per hour, what a week earns, and how much has to be sold. */
export const MARGIN_OUTPUTS: readonly OutputField[] = [
  {
    id: 'perChamberHour',
    label: 'Left over per chamber hour',
    group: 'cost',
    dimension: 'moneyPerTime',
    meaning: 'What an hour of one chamber leaves, from loading until it is clean again.',
    formula: '(sales − running cost) of a week ÷ chamber hours taken by its batches',
    needs: ['cycleTime', 'batches'],
    read: (result) => perHour(result, 'chambers'),
    working: (context) => perHourWorking(context, 'chambers'),
  },
  {
    id: 'perCrewHour',
    label: 'Left over per working hour',
    group: 'cost',
    dimension: 'moneyPerTime',
    meaning: 'What an hour of work at the chambers leaves, its own pay taken off where only worked hours are paid.',
    formula: '(sales − running cost) of a week ÷ hands-on hours',
    needs: ['handsOn', 'batches'],
    read: (result) => perHour(result, 'crew'),
    working: (context) => perHourWorking(context, 'crew'),
  },
  {
    id: 'perBusiestHour',
    label: 'Left over per scarce hour',
    group: 'cost',
    dimension: 'moneyPerTime',
    meaning: 'What an hour of whatever works hardest leaves: chambers, vacuum or people.',
    formula: '(sales − running cost) of a week ÷ hours of the resource with the highest use',
    needs: ['chamberUse', 'perChamberHour', 'perCrewHour'],
    read: (result) => perHour(result, busiest(result)),
    working: (context) => perHourWorking(context, busiest(context.result)),
  },
  {
    id: 'profit',
    label: 'Profit a week, your time unpaid',
    group: 'cost',
    dimension: 'money',
    meaning: 'Sales less all running and standing costs and failing pumps, before loans, wear and tax.',
    formula: 'sales − running cost − rent, maintenance and other standing cost − spoiled loads and repairs',
    needs: ['contribution', 'failures.cost'],
    read: profit,
    working: profitWorking,
  },
  {
    id: 'profit.ownerPaid',
    label: 'Profit a week, your time paid',
    group: 'cost',
    dimension: 'money',
    meaning: 'The same with your own hours paid at what they would cost to hire.',
    formula: 'profit a week − owner hours × worth of an owner hour',
    needs: ['profit'],
    read: (result) => profit(result) - result.cost.ownerTimePerWeek,
    working: profitOwnerPaidWorking,
  },
  {
    id: 'breakEven',
    label: 'Break-even sales',
    group: 'cost',
    dimension: 'massPerWeek',
    meaning: 'Dried product to sell in a week so that running and standing costs are just covered; no loans.',
    formula: 'standing cost ÷ (price − running cost), both per kilogram at the present mix',
    needs: ['cost.perKilogram'],
    read: ({ breakEven }) => breakEven.operating.perWeek,
    working: operatingBreakEvenWorking,
  },
  {
    id: 'breakEven.withLoans',
    label: 'Break-even with loans',
    group: 'cost',
    dimension: 'massPerWeek',
    meaning: 'The same with the loan payments of the dearest year to be covered too.',
    formula: '(standing cost + loan payments) ÷ (price − running cost)',
    needs: ['breakEven', 'debtService'],
    read: ({ breakEven }) => breakEven.withLoans.perWeek,
    working: loansBreakEvenWorking,
  },
  {
    id: 'marginOfSafety',
    label: 'Margin of safety',
    group: 'cost',
    dimension: 'fraction',
    meaning: 'How far sales may fall before costs and loan payments are no longer covered; negative when they are not.',
    formula: '(sales − break-even sales with loans) ÷ sales',
    needs: ['breakEven.withLoans'],
    read: ({ breakEven }) => breakEven.withLoans.marginOfSafety,
    working: marginOfSafetyWorking,
  },
  {
    id: 'bestMix.gain',
    label: 'Best mix brings more',
    group: 'cost',
    dimension: 'money',
    meaning: 'What a week would leave beyond the planned mix if the products were mixed best; an estimate.',
    formula: 'linear program: most left over under chamber hours, working hours and what sells − what is left now',
    needs: ['cycleTime', 'handsOn', 'contribution'],
    read: ({ bestMix }) => bestMix?.gain ?? null,
    working: bestMixGainWorking,
  },
  {
    id: 'bestMix.chamberHour',
    label: 'Worth of one more chamber hour',
    group: 'cost',
    dimension: 'moneyPerTime',
    meaning: 'What one more chamber hour a week would bring with the best mix; 0 where there are enough.',
    formula: 'shadow price of chamber hours in the linear program of the best mix',
    needs: ['bestMix.gain'],
    read: ({ bestMix }) => bestMix?.worthOfHour.chambers ?? null,
    working: worthOfHourWorking('chambers'),
  },
  {
    id: 'bestMix.crewHour',
    label: 'Worth of one more working hour',
    group: 'cost',
    dimension: 'moneyPerTime',
    meaning: 'What one more working hour a week would bring with the best mix; 0 where there are enough.',
    formula: 'shadow price of working hours in the linear program of the best mix',
    needs: ['bestMix.gain'],
    read: ({ bestMix }) => bestMix?.worthOfHour.crew ?? null,
    working: worthOfHourWorking('crew'),
  },
];
