import { meanEnergyPrice } from '../cost/tariff.ts';
import { type Holding, holdingsOf } from '../finance/capital-assets.ts';
import { DEPRECIATION_TABLES } from '../finance/depreciation-tables.ts';
import { baseValues } from '../inputs/base-values.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import { tariffBand } from './energy-tariff.ts';
import { plannedThings } from './equipment-purchases.ts';
import type { StageWeeks } from './evaluate-scenario.ts';
import { horizonMonths } from './horizon-months.ts';
import type {
  BasisHolding,
  BasisLoan,
  BasisPath,
  BasisPhase,
  BasisStage,
  BasisWeek,
  LenderBasis,
} from './lender-basis-types.ts';
import { startMonth } from './market.ts';
import { capacityByMonth } from './monthly-trade.ts';
import { planLoans } from './plan-loans.ts';
import { stagePurchases } from './plan-projection.ts';
import { expectedFailures } from './pump-failure-expected.ts';
import { pumpFailureTerms } from './pump-failure-terms.ts';
import { purchaseItems } from './scenario-capital.ts';
import { handsOnTime } from './scenario-cost.ts';
import { todayOf } from './scenario-equipment.ts';
import { type Stage, scenarioStages } from './scenario-stages.ts';
import type { AccountedWeek, ScenarioWeek } from './scenario-week.ts';
import { blendPhase, type TradePhase } from './trade-phase.ts';

/** A scenario as it runs from a month on. */
interface Run {
  readonly scenario: Scenario;
  readonly phase: TradePhase;
  /** Place of its week in the list of weeks; that of the larger market follows it. */
  readonly place: number;
}

/** Energy of a week by price: the basic price first, then the bands in their order [kWh/week]. */
function energyByPrice(plan: Plan, { plant, account }: AccountedWeek): number[] {
  const bands = plan.site.priceBands.map(tariffBand);
  // At a price of 1 in one band and 0 elsewhere the mean price is that band's share of the energy.
  const shares = bands.map((_, own) =>
    meanEnergyPrice(
      plant.week.power,
      0,
      bands.map((band, k) => ({ ...band, price: k === own ? 1 : 0 })),
    ),
  );
  const used = account.electricity.energy;
  return [used * (1 - shares.reduce((sum, share) => sum + share, 0)), ...shares.map((share) => used * share)];
}

/** Oil changes and rebuilds of a week by kind of pump. */
function pumpsOf(plan: Plan, { plant, account }: AccountedWeek): BasisWeek['pumps'] {
  const ids = [...new Set(plant.groups.map((group) => group.pumpTypeId))];
  return ids.map((pumpId) => {
    const { rebuildInterval } = baseValues('pump', findById(plan.pumps, pumpId, 'pump'));
    const own = plant.groups.flatMap((group, k) =>
      group.pumpTypeId === pumpId ? [{ time: group.pumpTime, changes: account.upkeep[k]?.oilChanges ?? 0 }] : [],
    );
    return {
      pumpId,
      oilChanges: own.reduce((sum, pump) => sum + pump.changes, 0),
      rebuilds: own.reduce((sum, pump) => sum + pump.time / rebuildInterval, 0),
    };
  });
}

function basisWeek(plan: Plan, scenario: Scenario, week: AccountedWeek, isLarger: boolean): BasisWeek {
  const { plant, account } = week;
  return {
    name: scenario.name,
    isLarger,
    products: plant.products.map((product) => ({
      productId: product.productId,
      batches: product.batches,
      wetIn: product.wetIn,
      dryOut: product.dryOut,
      chamberTime: product.cycleTime * product.batches,
      handsOn: handsOnTime(plant, product),
    })),
    energy: energyByPrice(plan, week),
    peakPower: plant.peakPower,
    paidTime: account.labour.paidTime,
    pumps: pumpsOf(plan, week),
    chambers: scenario.chambers.map(({ chamber, count }) => ({ chamberId: chamber, count })),
  };
}

function weeksOf(plan: Plan, scenario: Scenario, week: ScenarioWeek): BasisWeek[] {
  const larger = week.larger ? [basisWeek(plan, scenario, week.larger, true)] : [];
  return [basisWeek(plan, scenario, week, false), ...larger];
}

/** Dried food spoiled in a mean year of failing pumps, of one product [kg/year]: the cost if only it were worth something, 1 a kilogram. */
function spoiledPerYear(plan: Plan, { scenario, phase: { week } }: Run, productId: string): number {
  const products = week.account.week.products.map((product) => {
    const own = week.plant.products.find((made) => made.productId === product.productId)?.dryOut ?? 0;
    const revenue = product.productId === productId ? own : 0;
    return { ...product, revenue, running: { ...product.running, packaging: 0 } };
  });
  const terms = pumpFailureTerms(plan, scenario, week.plant, { ...week.account.week, products });
  return expectedFailures(terms).cost.spoiled;
}

function basisPhase(plan: Plan, run: Run, horizon: number): BasisPhase {
  const { scenario, phase, place } = run;
  const { plant, larger, failures } = phase.week;
  return {
    month: phase.month,
    week: place,
    larger: larger ? place + 1 : null,
    largerShares: blendPhase(plan, phase, horizon).shares,
    pumpId: scenario.pump,
    availability: failures.availability,
    failuresPerYear: failures.failures,
    spoiled: plant.products.map(({ productId }) => ({ productId, perYear: spoiledPerYear(plan, run, productId) })),
  };
}

function basisHolding({ purchase, from, until }: Holding, key: string | null, count: number): BasisHolding {
  const isGiven = purchase.sold !== null && until === purchase.sold.month;
  const end = until === null ? 'kept' : isGiven ? 'given' : 'worn';
  return { name: purchase.name, key, count, stageMonth: purchase.month, from, until, end, life: purchase.lifeMonths };
}

function basisPath(plan: Plan, stages: readonly Stage[], runs: readonly Run[]): BasisPath {
  const horizon = horizonMonths(plan);
  const blends = runs.map(({ phase }) => blendPhase(plan, phase, horizon));
  const ids = [...new Set(runs.flatMap(({ phase }) => phase.week.plant.products.map((product) => product.productId)))];
  return {
    phases: runs.map((run) => basisPhase(plan, run, horizon)),
    capacity: ids.map((productId) => ({ productId, perWeek: capacityByMonth(plan, blends, productId, horizon) })),
    holdings: plannedThings(plan, stages).flatMap(({ item, count, purchase }) =>
      holdingsOf(purchase, horizon).map((holding) => basisHolding(holding, item?.key ?? null, count)),
    ),
  };
}

function basisStage(plan: Plan, stage: Stage): BasisStage {
  return {
    scenarioId: stage.scenario.id,
    name: stage.scenario.name,
    month: stage.month,
    items: purchaseItems(plan, stage).map(({ key, name, count }) => ({ key, name, count })),
  };
}

function basisLoans(plan: Plan, stages: readonly Stage[]): BasisLoan[] {
  return planLoans(plan, stagePurchases(plan, stages))
    .filter(({ terms }) => terms.drawMonth < horizonMonths(plan))
    .map(({ id, name, terms }) => ({ id, name, drawMonth: terms.drawMonth, isRunning: terms.isRunning ?? false }));
}

function writeOffTable({ financing: { depreciationMethod } }: Plan): readonly number[] | null {
  return depreciationMethod === 'straightLine' ? null : DEPRECIATION_TABLES[depreciationMethod];
}

/**
 * What a projection of a scenario is made of before any price is put to it: the counts of the simulated weeks, what is bought
 * when, which loans are drawn. A spreadsheet can go on from here by itself.
 * @param weeks of this scenario, see `stageWeeks`
 */
export function lenderBasis(plan: Plan, scenario: Scenario, weeks: StageWeeks): LenderBasis {
  const stages = scenarioStages(plan, scenario);
  const named = [
    { scenario: todayOf(plan), phase: { month: -1, week: weeks.today } },
    ...stages.map((stage, k) => ({
      scenario: stage.scenario,
      phase: { month: stage.month, week: weeks.stages[k] ?? weeks.today },
    })),
  ];
  const all: BasisWeek[] = [];
  const runs = named.map((run): Run => {
    const place = all.length;
    all.push(...weeksOf(plan, run.scenario, run.phase.week));
    return { ...run, place };
  });
  return {
    horizonMonths: horizonMonths(plan),
    startMonth: startMonth(plan),
    weeks: all,
    today: basisPath(plan, [], runs.slice(0, 1)),
    path: stages.length === 0 ? null : basisPath(plan, stages, runs),
    stages: stages.map((stage) => basisStage(plan, stage)),
    loans: basisLoans(plan, stages),
    writeOffTable: writeOffTable(plan),
  };
}
