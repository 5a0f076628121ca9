import type { GroupWeek, LimitHours } from '../../plant/report-types.ts';
import type { ScenarioResult } from '../scenario-result.ts';
import {
  chamberPressureWorking,
  limitShareWorking,
  peakPowerWorking,
  pressureWorking,
  pumpHoursWorking,
  toleranceUseWorking,
  trapFillWorking,
  vapourMeanWorking,
  vapourPeakWorking,
} from '../workings/vacuum-workings.ts';
import type { OutputField } from './output-field.ts';

function most(result: ScenarioResult, pick: (group: GroupWeek) => number): number {
  return result.plant.groups.reduce((highest, group) => Math.max(highest, pick(group)), 0);
}

function total(result: ScenarioResult, pick: (group: GroupWeek) => number): number {
  return result.plant.groups.reduce((sum, group) => sum + pick(group), 0);
}

function sublimation(limits: LimitHours): number {
  const { desorption: _, ...rest } = limits;
  return Object.values(rest).reduce((sum, time) => sum + time, 0);
}

/** Share of the hardest-pressed pump's vapour tolerance in use; null when no tolerance is known. */
function toleranceUse(result: ScenarioResult): number | null {
  const uses = result.plant.groups.flatMap((group) =>
    group.vapourTolerance > 0 ? [group.vapourLoadMean / group.vapourTolerance] : [],
  );
  return uses.length > 0 ? Math.max(...uses) : null;
}

/** What the pumps and traps go through. */
export const VACUUM_OUTPUTS: readonly OutputField[] = [
  {
    id: 'vapourLoadMean',
    label: 'Vapour load, mean',
    group: 'vacuum',
    dimension: 'massFlow',
    meaning: 'Water that slips past the traps into the hardest-worked pump, averaged over its running time.',
    formula: 'pump throughput × vapour share × molar mass ÷ (gas constant × gas temperature), averaged',
    needs: ['manifoldPressure95'],
    read: (result) => most(result, (group) => group.vapourLoadMean),
    working: vapourMeanWorking,
  },
  {
    id: 'vapourLoadPeak',
    label: 'Vapour load, peak',
    group: 'vacuum',
    dimension: 'massFlow',
    meaning: 'The most water per hour that any pump has to swallow.',
    formula: 'highest value of the vapour load',
    needs: ['vapourLoadMean'],
    read: (result) => most(result, (group) => group.vapourLoadPeak),
    working: vapourPeakWorking,
  },
  {
    id: 'toleranceUse',
    label: 'Of what the pump can swallow',
    group: 'vacuum',
    dimension: 'fraction',
    meaning:
      'Mean vapour load against what the pump passes with gas ballast open; above 100 % water gathers in the oil.',
    formula: 'mean vapour load ÷ vapour tolerance, hardest-worked pump',
    needs: ['vapourLoadMean'],
    read: toleranceUse,
    working: toleranceUseWorking,
  },
  {
    id: 'manifoldPressure95',
    label: 'Pump inlet pressure (95 %)',
    group: 'vacuum',
    dimension: 'pressure',
    meaning: 'Pressure at the shared inlet that is not exceeded 95 % of the time; a strained pump shows here.',
    formula: 'time-weighted 95th percentile of the pressure at which the pump takes what the hoses bring',
    needs: [],
    read: (result) => most(result, (group) => group.manifoldPressure95),
    working: pressureWorking,
  },
  {
    id: 'chamberPressureMean',
    label: 'Chamber pressure, mean',
    group: 'vacuum',
    dimension: 'pressure',
    meaning: 'Mean pressure in the chambers while ice is drying off.',
    formula: 'vapour over the trap + gas left by the pump, averaged over primary drying',
    needs: [],
    read: (result) => result.plant.chamberPressureMean,
    working: chamberPressureWorking,
  },
  {
    id: 'ceilingByGas',
    label: 'Held back by the pump',
    group: 'vacuum',
    dimension: 'fraction',
    meaning: 'Share of ice-drying time in which gas that the pump has not taken away holds the heat back.',
    formula: '(time at the pressure ceiling with more gas than vapour + time flooded by a newcomer) ÷ ice-drying time',
    needs: ['manifoldPressure95'],
    read: ({ plant }) => {
      const time = sublimation(plant.limits);
      return time > 0 ? (plant.limits.ceilingByGas + plant.limits.flooded) / time : null;
    },
    working: (context) =>
      limitShareWorking(
        context,
        ['ceilingByGas', 'flooded'],
        '(time at the pressure ceiling with more gas than vapour + time flooded by a newcomer) ÷ ice-drying time',
      ),
  },
  {
    id: 'ceilingByTrap',
    label: 'Held back by the trap',
    group: 'vacuum',
    dimension: 'fraction',
    meaning:
      'Share of ice-drying time at the pressure ceiling with most of the pressure being vapour over the cold trap.',
    formula: 'time at the pressure ceiling with more vapour than gas ÷ ice-drying time',
    needs: [],
    read: ({ plant }) => {
      const time = sublimation(plant.limits);
      return time > 0 ? plant.limits.ceilingByTrap / time : null;
    },
    working: (context) =>
      limitShareWorking(
        context,
        ['ceilingByTrap'],
        'time at the pressure ceiling with more vapour than gas ÷ ice-drying time',
      ),
  },
  {
    id: 'trapFill',
    label: 'Fullest trap',
    group: 'vacuum',
    dimension: 'fraction',
    meaning: 'Ice on the fullest trap at the end of a batch against what it can hold.',
    formula: 'ice on the trap ÷ capacity, highest of all batches',
    needs: [],
    read: (result) => result.plant.trapFill,
    working: trapFillWorking,
  },
  {
    id: 'pumpHours',
    label: 'Pump hours a week',
    group: 'vacuum',
    dimension: 'time',
    meaning:
      'Running hours of all main pumps together; a shared pump runs from the first chamber that asks to the last.',
    formula: 'sum over the pumps of the time any of their chambers needs vacuum',
    needs: [],
    read: (result) => total(result, (group) => group.pumpTime),
    working: pumpHoursWorking,
  },
  {
    id: 'peakPower',
    label: 'Electric peak',
    group: 'vacuum',
    dimension: 'power',
    meaning: 'Highest quarter-hour mean of everything that runs at once.',
    formula: 'heaters + refrigeration + pumps + freezer + defrost + controls, highest quarter of an hour',
    needs: [],
    read: (result) => result.plant.peakPower,
    working: peakPowerWorking,
  },
];
