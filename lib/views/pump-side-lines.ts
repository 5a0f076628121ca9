import type { ScenarioResult } from '../model/scenario-result.ts';
import type { PumpFailureRisk } from '../risk/pump-failure.ts';
import type { Dimension } from '../units/dimension.ts';

/** A side that could be worked out. */
export interface Side {
  readonly result: ScenarioResult;
  readonly risk: PumpFailureRisk;
}

export type Wish = 'less' | 'more' | 'neither';

/** One figure of the comparison. */
export interface SideLine {
  readonly block: string;
  readonly label: string;
  readonly dimension: Dimension;
  readonly wish: Wish;
  /** Heading in the picture; not in it without one. */
  readonly panel?: string;
  readonly read: (side: Side) => number | null;
}

const WEEKS_PER_YEAR = 365.25 / 7;

function partOf(result: ScenarioResult, part: string): number | null {
  return result.cost.lines.find((line) => line.part === part)?.perWeek ?? null;
}

function highest(result: ScenarioResult, pick: (group: ScenarioResult['plant']['groups'][number]) => number): number {
  return result.plant.groups.reduce((most, group) => Math.max(most, pick(group)), 0);
}

function months({ result }: Side): number | null {
  const payback = result.finance.versusToday?.payback;
  return payback?.kind === 'crossed' ? payback.months : null;
}

/** All figures that are compared, by what they are about. */
export const SIDE_LINES: readonly SideLine[] = [
  {
    block: 'Money',
    label: 'To be bought',
    panel: 'To be bought',
    dimension: 'money',
    wish: 'less',
    read: ({ result }) => result.capitalTotal,
  },
  {
    block: 'Money',
    label: 'Left over a week',
    panel: 'Left over a week',
    dimension: 'money',
    wish: 'more',
    read: ({ result }) => result.cost.contributionPerWeek,
  },
  { block: 'Money', label: 'Payback', dimension: 'months', wish: 'less', read: months },
  {
    block: 'Money',
    label: 'Net present value',
    dimension: 'money',
    wish: 'more',
    read: ({ result }) => result.finance.versusToday?.netPresentValue ?? null,
  },
  {
    block: 'Output',
    label: 'Dried product a week',
    panel: 'Dried product a week',
    dimension: 'mass',
    wish: 'more',
    read: ({ result }) => result.plant.dryOut,
  },
  {
    block: 'Output',
    label: 'Batches a week',
    dimension: 'count',
    wish: 'more',
    read: ({ result }) => result.plant.batches,
  },
  {
    block: 'Output',
    label: 'Hours per batch',
    dimension: 'time',
    wish: 'less',
    read: ({ result }) => result.plant.cycleTime,
  },
  {
    block: 'Output',
    label: 'Pump inlet pressure (95 %)',
    dimension: 'pressure',
    wish: 'neither',
    read: ({ result }) => highest(result, (group) => group.manifoldPressure95),
  },
  {
    block: 'When a pump fails',
    label: 'Failures a year',
    dimension: 'count',
    wish: 'less',
    read: ({ risk }) => risk.expected.failures,
  },
  {
    block: 'When a pump fails',
    label: 'Time with every chamber stopped, a year',
    dimension: 'time',
    wish: 'less',
    read: ({ risk }) => (risk.expected.stopped.at(-1) ?? 0) * 365.25 * 86_400,
  },
  {
    block: 'When a pump fails',
    label: 'Batches lost a year',
    panel: 'Batches lost by failures, a year',
    dimension: 'count',
    wish: 'less',
    read: ({ risk }) => risk.expected.lostBatches,
  },
  {
    block: 'When a pump fails',
    label: 'Cost of a mean year',
    panel: 'Failures in a mean year',
    dimension: 'money',
    wish: 'less',
    read: ({ risk }) => risk.expected.cost.total,
  },
  {
    block: 'When a pump fails',
    label: 'Cost of one bad year in twenty',
    panel: 'Failures, one bad year in twenty',
    dimension: 'money',
    wish: 'less',
    read: ({ risk }) => risk.spread.worstInTwenty,
  },
  {
    block: 'Oil and upkeep',
    label: 'Oil changes a year',
    dimension: 'count',
    wish: 'less',
    read: ({ result }) => result.cost.oilChangesPerWeek * WEEKS_PER_YEAR,
  },
  {
    block: 'Oil and upkeep',
    label: 'Oil and upkeep a week',
    panel: 'Oil and upkeep a week',
    dimension: 'money',
    wish: 'less',
    read: ({ result }) => partOf(result, 'oil'),
  },
  {
    block: 'Oil and upkeep',
    label: 'Pump hours a week',
    dimension: 'time',
    wish: 'less',
    read: ({ result }) => result.plant.groups.reduce((sum, group) => sum + group.pumpTime, 0),
  },
  {
    block: 'Power',
    label: 'Energy of the pumps a week',
    panel: 'Power for the pumps, a week',
    dimension: 'energy',
    wish: 'less',
    read: ({ result }) => result.plant.energy.pumps,
  },
  {
    block: 'Power',
    label: 'Electricity a week',
    dimension: 'money',
    wish: 'less',
    read: ({ result }) => partOf(result, 'electricity'),
  },
  {
    block: 'Power',
    label: 'Electric peak',
    dimension: 'power',
    wish: 'less',
    read: ({ result }) => result.plant.peakPower,
  },
];

/** Two figures closer than this share are as good as equal. */
export const EQUAL = 0.005;

/** Which of two figures is better; null where they are as good as equal or it is no matter of better. */
export function betterOf(own: number | null, shared: number | null, wish: Wish): 'own' | 'shared' | null {
  if (wish === 'neither' || own === null || shared === null) return null;
  const gap = own - shared;
  if (Math.abs(gap) <= EQUAL * Math.max(Math.abs(own), Math.abs(shared))) return null;
  return gap < 0 === (wish === 'less') ? 'own' : 'shared';
}
