import { electricityCost } from '../cost/electricity.ts';
import { type LabourCost, labourCost } from '../cost/labour.ts';
import { type PumpUpkeepCost, pumpUpkeepCost } from '../cost/pump-upkeep.ts';
import { type ProductTerms, type WeeklyCost, weeklyCost } from '../cost/weekly-cost.ts';
import { baseValues } from '../inputs/base-values.ts';
import { findById } from '../plan/find-by-id.ts';
import type { Plan, Scenario } from '../plan/plan-types.ts';
import type { BatchRecord, GroupWeek, PlantReport, ProductWeek } from '../plant/report-types.ts';
import { tariffBand } from './energy-tariff.ts';
import { ownerWeek } from './owner-week.ts';
import type { CostLine, CostPart, ScenarioCost, WeekAccount } from './scenario-result.ts';

/** The week's accounts of a scenario, and what shows of them. */
export interface CostAccount extends WeekAccount {
  readonly shown: ScenarioCost;
}

function pumpUpkeep(plan: Plan, group: GroupWeek): PumpUpkeepCost {
  const pump = baseValues('pump', findById(plan.pumps, group.pumpTypeId, 'pump'));
  const oil = {
    volume: pump.oilVolume,
    price: pump.oilPrice,
    lifeTime: pump.oilLifeHours,
    lifeWater: pump.oilLifeWater,
    filterCost: pump.filterCost,
  };
  return pumpUpkeepCost({
    pumpTime: group.pumpTime,
    waterSwallowed: group.waterSwallowed,
    oil: pump.oilVolume > 0 ? oil : null,
    rebuildInterval: pump.rebuildInterval,
    rebuildCost: pump.rebuildCost,
  });
}

/** Seconds a product's batches spent in some phases, scaled from the finished batches to the week's count. */
function phaseTime(
  batches: readonly BatchRecord[],
  week: ProductWeek,
  phases: readonly (keyof BatchRecord['phases'])[],
): number {
  const own = batches.filter((batch) => batch.productId === week.productId);
  if (own.length === 0) return 0;
  const total = own.reduce(
    (sum, batch) => sum + phases.reduce((part, phase) => part + (batch.phases[phase] ?? 0), 0),
    0,
  );
  return (total / own.length) * week.batches;
}

/** Time that people have their hands on a product in a week [s/week]. */
export function handsOnTime(plant: PlantReport, week: ProductWeek): number {
  return phaseTime(plant.batchRecords, week, ['loading', 'unloading', 'cleaning']);
}

function productTerms(plan: Plan, plant: PlantReport, week: ProductWeek): ProductTerms {
  const product = baseValues('product', findById(plan.products, week.productId, 'product'));
  const underVacuum = phaseTime(plant.batchRecords, week, ['pumpDown', 'primary', 'secondary', 'hold']);
  const handsOn = handsOnTime(plant, week);
  const chamberTime = week.cycleTime * week.batches;
  return {
    productId: week.productId,
    batches: week.batches,
    wetIn: week.wetIn,
    dryOut: week.dryOut,
    pricePerWetKilogram: product.wetCost,
    trimLoss: product.trimLoss,
    saleableYield: product.saleableYield,
    packagingPerKilogram: product.packaging,
    otherPerBatch: product.otherPerBatch,
    pricePerKilogram: product.price,
    chamberTime,
    handsOn,
    resources: { chambers: chamberTime, pump: underVacuum, crew: handsOn },
  };
}

/** Maintenance of all chambers [money/month]. */
function maintenancePerMonth(plan: Plan, scenario: Scenario): number {
  return scenario.chambers.reduce((sum, entry) => {
    const { maintenance } = baseValues('chamber', findById(plan.chambers, entry.chamber, 'chamber type'));
    return sum + entry.count * maintenance;
  }, 0);
}

function scenarioLabour(plan: Plan, plant: PlantReport): LabourCost {
  const crew = baseValues('crew', plan.crew);
  const { load, unload, clean, onShift } = plant.crew;
  return labourCost({
    tasks: { load, unload, clean },
    onShift,
    wage: crew.wage,
    onCost: crew.onCost,
    guaranteed: crew.guaranteed,
    owner: { time: crew.ownerAtChambers, rate: crew.ownerRate },
  });
}

function costLines(week: WeeklyCost, batches: number, dryOut: number): CostLine[] {
  const { running, standing } = week;
  const amounts: Record<CostPart, number> = {
    materials: running.ingredients,
    packaging: running.packaging,
    oil: running.upkeep,
    electricity: running.energy + standing.demandCharge + standing.electricityFixed,
    labour: running.labour + standing.labour,
    other: running.other,
  };
  return (Object.keys(amounts) as CostPart[]).map((part) => ({
    part,
    perWeek: amounts[part],
    perBatch: batches > 0 ? amounts[part] / batches : 0,
    perKilogram: dryOut > 0 ? amounts[part] / dryOut : 0,
  }));
}

function shownCost(plan: Plan, plant: PlantReport, week: WeeklyCost, upkeep: readonly PumpUpkeepCost[]): ScenarioCost {
  const lines = costLines(week, plant.batches, plant.dryOut);
  const spent = lines.reduce((sum, line) => sum + line.perWeek, 0);
  const contribution = week.revenue - spent;
  return {
    lines,
    perWeek: spent,
    perBatch: lines.reduce((sum, line) => sum + line.perBatch, 0),
    perKilogram: lines.reduce((sum, line) => sum + line.perKilogram, 0),
    salesPerWeek: week.revenue,
    contributionPerWeek: contribution,
    contributionPerBatch: plant.batches > 0 ? contribution / plant.batches : 0,
    ownerTimePerWeek: ownerWeek(plan),
    oilChangesPerWeek: upkeep.reduce((sum, pump) => sum + pump.oilChanges, 0),
    oilLimit: upkeep.some((pump) => pump.changedFor === 'water') ? 'water' : 'hours',
  };
}

/** What a week of the scenario costs and leaves, from what the simulation found [money/week]. */
export function scenarioCost(plan: Plan, scenario: Scenario, plant: PlantReport): CostAccount {
  const site = baseValues('site', plan.site);
  const electricity = electricityCost({
    energy: { ...plant.energy },
    peakPower: plant.peakPower,
    profile: plant.week.power,
    tariff: {
      energyPrice: site.electricityPrice,
      bands: plan.site.priceBands.map(tariffBand),
      demandCharge: site.demandCharge,
      fixedPerMonth: site.electricityFixed,
    },
  });
  const upkeep = plant.groups.map((group) => pumpUpkeep(plan, group));
  const labour = scenarioLabour(plan, plant);
  const week = weeklyCost({
    products: plant.products.map((product) => productTerms(plan, plant, product)),
    electricity,
    upkeep,
    labour,
    fixedPerMonth: { rent: site.rentAndFixed, maintenance: maintenancePerMonth(plan, scenario) },
  });
  return { week, electricity, labour, upkeep, shown: shownCost(plan, plant, week, upkeep) };
}
