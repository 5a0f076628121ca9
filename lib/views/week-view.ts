import { inBase } from '../inputs/quantity.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import type { Phase, PlantReport } from '../plant/report-types.ts';
import type { DataSeries } from './data-series.ts';
import type { DataTable } from './data-table.ts';
import { formatFixed, formatPercent } from './format-number.ts';
import { type ShownAs, shownValue, unitText } from './format-quantity.ts';
import { kindOfPhase, PHASE_KIND_LABELS, PHASE_KINDS, PHASE_LABELS, type PhaseKind } from './phase-kinds.ts';
import type { WeekPictureInput } from './week-picture.ts';
import { DAY, HOUR, WEEK } from './week-times.ts';

export interface WeekView {
  readonly finding: string;
  readonly summary: string;
  /** Kinds of phase that occur, in the order of the legend. */
  readonly legend: readonly { readonly kind: PhaseKind; readonly label: string }[];
  readonly picture: Omit<WeekPictureInput, 'width'>;
  readonly table: DataTable;
  readonly series: DataSeries;
}

function hoursByKind(plant: PlantReport): ReadonlyMap<PhaseKind, number> {
  const hours = new Map<PhaseKind, number>();
  for (const [phase, time] of Object.entries(plant.phases) as [Phase, number][]) {
    const kind = kindOfPhase(phase);
    hours.set(kind, (hours.get(kind) ?? 0) + time);
  }
  return hours;
}

function findingOf(plant: PlantReport, hours: ReadonlyMap<PhaseKind, number>): string {
  const all = plant.chambers * WEEK;
  const share = (...kinds: PhaseKind[]) => kinds.reduce((sum, kind) => sum + (hours.get(kind) ?? 0), 0) / all;
  const drying = formatPercent(share('primary', 'secondary'));
  const waits: [string, number][] = [
    ['for people', share('waitingForPeople')],
    ['for the pump', share('waitingForPump')],
    ['for something to make', share('idle')],
    ['for the freezer', share('waitingForFreezer')],
  ];
  const longest = waits.reduce((most, wait) => (wait[1] > most[1] ? wait : most));
  const lead = `Chambers dry ${drying} of the week`;
  return longest[1] < 0.01 ? lead : `${lead} and wait ${longest[0]} ${formatPercent(longest[1])} of it`;
}

function summaryOf(plant: PlantReport): string {
  const pumpHours = plant.groups.reduce((sum, group) => sum + group.pumpTime, 0) / HOUR;
  const ceiling = Math.max(0, ...plant.groups.map((group) => group.ceilingShare));
  const pumps = plant.groups.length === 1 ? 'The pump runs' : `The ${plant.groups.length} pumps together run`;
  return `${pumps} ${formatFixed(pumpHours, 0)} hours a week. ${formatPercent(ceiling)} of the drying time is spent at the pressure ceiling, where the heat is held back.`;
}

function tableOf(plant: PlantReport, hours: ReadonlyMap<PhaseKind, number>): DataTable {
  const all = plant.chambers * WEEK;
  return {
    caption: 'Where the chamber hours of an average week go',
    head: ['', 'Hours a week', 'Share'],
    rows: PHASE_KINDS.filter((kind) => (hours.get(kind) ?? 0) > 0).map((kind) => [
      PHASE_KIND_LABELS[kind],
      formatFixed((hours.get(kind) ?? 0) / HOUR, 1),
      formatPercent((hours.get(kind) ?? 0) / all),
    ]),
  };
}

/** What each chamber does from when to when in the typical week. */
function seriesOf(plan: Plan, plant: PlantReport): DataSeries {
  const names = new Map(plan.products.map((product) => [product.id, product.name]));
  return {
    head: ['Chamber', 'From [h since Monday 00:00]', 'To [h]', 'Phase', 'Product'],
    rows: plant.week.lanes.map((span) => [
      span.chamber + 1,
      span.start / HOUR,
      span.end / HOUR,
      PHASE_LABELS[span.phase],
      names.get(span.productId) ?? '',
    ]),
  };
}

/** People on shift over the week at each change: [time s, people], from Monday 00:00. */
export function peopleOnShift(plan: Plan, scenario: Scenario): [number, number][] {
  const shifts = plan.crew.patterns.find((pattern) => pattern.id === scenario.pattern)?.shifts ?? [];
  const changes = shifts.flatMap((shift) =>
    shift.weekdays.flatMap((day): [number, number][] => [
      [day * DAY + shift.start * HOUR, shift.people],
      [day * DAY + shift.end * HOUR, -shift.people],
    ]),
  );
  let people = 0;
  const steps = changes
    .sort((a, b) => a[0] - b[0])
    .map(([time, change]): [number, number] => {
      people += change;
      return [time, people];
    });
  return [[0, 0], ...steps];
}

function lowestCeiling(plan: Plan, scenario: Scenario): number {
  const used = scenario.chambers.filter((entry) => entry.count > 0).map((entry) => entry.chamber);
  const ceilings = plan.chambers
    .filter((chamber) => used.includes(chamber.id))
    .map((chamber) => inBase(chamber.pressureCeiling, 'pressure'));
  return Math.min(...ceilings);
}

function toleranceOf(plan: Plan, scenario: Scenario): number | null {
  const pump = plan.pumps.find((candidate) => candidate.id === scenario.pump);
  const tolerance = pump ? inBase(pump.vapourTolerance, 'massFlow') : 0;
  return tolerance > 0 ? tolerance : null;
}

function pictureOf(plan: Plan, scenario: Scenario, plant: PlantReport, shown: ShownAs): WeekView['picture'] {
  const quantity = (dimension: 'massFlow' | 'pressure') => ({
    unit: unitText(dimension, shown),
    shown: (base: number) => shownValue(base, dimension, shown),
  });
  return {
    week: plant.week,
    chambers: plant.chambers,
    productNames: new Map(plan.products.map((product) => [product.id, product.name])),
    vapour: quantity('massFlow'),
    pressure: quantity('pressure'),
    tolerance: toleranceOf(plan, scenario),
    ceiling: lowestCeiling(plan, scenario),
    onShift: peopleOnShift(plan, scenario),
  };
}

/** Everything the figure "a typical week" shows. The plan must be the one that the report was computed from. */
export function weekView(plan: Plan, scenario: Scenario, plant: PlantReport, shown: ShownAs): WeekView {
  const hours = hoursByKind(plant);
  return {
    finding: findingOf(plant, hours),
    summary: summaryOf(plant),
    legend: PHASE_KINDS.filter((kind) => plant.week.lanes.some((span) => kindOfPhase(span.phase) === kind)).map(
      (kind) => ({ kind, label: PHASE_KIND_LABELS[kind] }),
    ),
    picture: pictureOf(plan, scenario, plant, shown),
    table: tableOf(plant, hours),
    series: seriesOf(plan, plant),
  };
}
