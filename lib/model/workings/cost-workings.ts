import type { CostPart } from '../scenario-result.ts';
import { electricityTerm } from './electricity-workings.ts';
import { labourTerm } from './labour-workings.ts';
import { ingredientsTerm, otherTerm, packagingTerm, salesTerm } from './product-money-workings.ts';
import { numbered, sumWorking, worked, workedTerm } from './terms.ts';
import { batchesWorking, dryWorking } from './throughput-workings.ts';
import { upkeepTerm } from './upkeep-workings.ts';
import type { Term, WorkContext, Working } from './working.ts';

const PARTS: Readonly<Record<CostPart, (context: WorkContext, symbol: string) => Term>> = {
  materials: ingredientsTerm,
  packaging: packagingTerm,
  electricity: electricityTerm,
  oil: upkeepTerm,
  labour: labourTerm,
  other: otherTerm,
};

const PART_WORDS: Readonly<Record<CostPart, string>> = {
  materials: 'Ingredients',
  packaging: 'Packaging',
  electricity: 'Electricity',
  oil: 'Oil and vacuum upkeep',
  labour: 'Labour',
  other: 'Other',
};

/** Batches of an average week as a term. */
export function weekBatchesTerm(context: WorkContext, symbol: string): Term {
  return workedTerm({ label: 'Batches a week', symbol, value: context.result.plant.batches, dimension: 'count' }, () =>
    batchesWorking(context),
  );
}

/** A part of the week's cost over the week's batches. */
export function costPartWorking(context: WorkContext, part: CostPart): Working {
  return worked(
    `${PART_WORDS[part].toLowerCase()} of a week ÷ batches of a week`,
    'c ÷ b',
    [PARTS[part](context, 'c'), weekBatchesTerm(context, 'b')],
    ([c = 0, b = 0]) => (b > 0 ? c / b : 0),
  );
}

/** What a batch costs, part by part. */
export function batchCostWorking(context: WorkContext): Working {
  const terms = context.result.cost.lines.map((line, k) =>
    workedTerm(
      { label: PART_WORDS[line.part], symbol: numbered('c', k + 1), value: line.perBatch, dimension: 'money' },
      () => costPartWorking(context, line.part),
    ),
  );
  return sumWorking('ingredients + packaging + oil + electricity + labour + other', terms);
}

/** Running cost of a week. */
function weekCostTerm(context: WorkContext, symbol: string): Term {
  const { cost } = context.result;
  return workedTerm({ label: 'Running cost a week', symbol, value: cost.perWeek, dimension: 'money' }, () =>
    sumWorking(
      'every part of the week’s cost, added up',
      cost.lines.map((line, k) => PARTS[line.part](context, numbered('c', k + 1))),
    ),
  );
}

export function perKilogramWorking(context: WorkContext): Working {
  const dry = workedTerm(
    { label: 'Dried product a week', symbol: 'd', value: context.result.plant.dryOut, dimension: 'massPerWeek' },
    () => dryWorking(context),
  );
  return worked(
    'running cost of a week ÷ dried product of a week',
    'c ÷ d',
    [weekCostTerm(context, 'c'), dry],
    ([c = 0, d = 0]) => (d > 0 ? c / d : 0),
  );
}

export function contributionWorking(context: WorkContext): Working {
  return worked(
    'sales of a week − running cost of a week',
    's − c',
    [salesTerm(context, 's'), weekCostTerm(context, 'c')],
    ([s = 0, c = 0]) => s - c,
  );
}
