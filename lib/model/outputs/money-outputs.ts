import type { CostPart, ScenarioResult } from '../scenario-result.ts';
import { capitalWorking } from '../workings/capital-workings.ts';
import {
  batchCostWorking,
  contributionWorking,
  costPartWorking,
  perKilogramWorking,
} from '../workings/cost-workings.ts';
import type { OutputField } from './output-field.ts';

function part(result: ScenarioResult, name: CostPart): number | null {
  return result.cost.lines.find((line) => line.part === name)?.perBatch ?? null;
}

function costOutput(name: CostPart, label: string, meaning: string, formula: string): OutputField {
  return {
    id: `cost.${name}`,
    label,
    group: 'cost',
    dimension: 'money',
    meaning,
    formula,
    needs: ['batches'],
    read: (result) => part(result, name),
    working: (context) => costPartWorking(context, name),
  };
}

/** What a batch costs and what is left of it. */
export const COST_OUTPUTS: readonly OutputField[] = [
  costOutput(
    'materials',
    'Ingredients',
    'Food that goes into an average batch.',
    'wet load ÷ (1 − trim loss) × price of ingredients',
  ),
  costOutput(
    'packaging',
    'Packaging',
    'Bags, labels and oxygen absorbers of an average batch.',
    'saleable kilograms × packaging per kilogram',
  ),
  costOutput(
    'electricity',
    'Electricity',
    'Electricity of an average batch, its share of the demand charge included.',
    '(energy × price + peak × demand charge + fixed charge) per week ÷ batches per week',
  ),
  costOutput(
    'oil',
    'Oil and vacuum upkeep',
    'Pump oil, filters and rebuilds of an average batch.',
    '(oil changes by hours or by swallowed water, whichever comes first + rebuilds by hours) per week ÷ batches per week',
  ),
  costOutput(
    'labour',
    'Labour',
    'Paid work of an average batch.',
    'paid hours per week × wage with on-costs ÷ batches per week',
  ),
  costOutput('other', 'Other', 'Liners, cleaning supplies and the like.', 'other cost per batch'),
  {
    id: 'cost.total',
    label: 'Cost per batch',
    group: 'cost',
    dimension: 'money',
    meaning: 'Everything that is spent because a batch is made; rent and the like are not in it.',
    formula: 'ingredients + packaging + electricity + oil + labour + other',
    needs: ['cost.materials', 'cost.packaging', 'cost.electricity', 'cost.oil', 'cost.labour', 'cost.other'],
    read: (result) => result.cost.perBatch,
    working: batchCostWorking,
  },
  {
    id: 'cost.perKilogram',
    label: 'Cost per dried weight',
    group: 'cost',
    dimension: 'moneyPerMass',
    meaning: 'Running cost of the dried product by weight.',
    formula: 'running cost per week ÷ dried product per week',
    needs: ['cost.total', 'dryOut'],
    read: (result) => result.cost.perKilogram,
    working: perKilogramWorking,
  },
  {
    id: 'contribution',
    label: 'Left over a week',
    group: 'cost',
    dimension: 'money',
    meaning: 'Sales less running cost in a normal week, before rent, loans and tax.',
    formula: 'sales − running cost',
    needs: ['cost.total', 'batches'],
    read: (result) => result.cost.contributionPerWeek,
    working: contributionWorking,
  },
];

export const CAPITAL_OUTPUTS: readonly OutputField[] = [
  {
    id: 'capital',
    label: 'To be bought',
    group: 'capital',
    dimension: 'money',
    meaning: 'Everything to be bought beyond what the shop has today.',
    formula: 'chambers + pumps + hoses + manifold + electrical work + delivery + contingency',
    needs: [],
    read: (result) => result.capitalTotal,
    working: capitalWorking,
  },
];
