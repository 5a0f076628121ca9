import { inBase } from '../../inputs/quantity.ts';
import type { Finding } from '../../result.ts';
import type { ChamberType, Plan, PumpType } from '../plan-types.ts';
import { planError } from './plan-error.ts';

function trapFindings(chamber: ChamberType, path: string): readonly Finding[] {
  const { trapRatedTemperature, trapNoLoadTemperature } = chamber;
  if (inBase(trapRatedTemperature, 'temperature') > inBase(trapNoLoadTemperature, 'temperature')) return [];
  const problem = `The cold trap of ${chamber.name} is no warmer under its rated load than with no load.`;
  const remedy = 'Give a warmer temperature at rated load, or a colder one with no load.';
  const value = `${trapRatedTemperature.value} ${trapRatedTemperature.unit}`;
  return [planError(`${path}.trapRatedTemperature`, value, problem, remedy)];
}

function speedTableFindings(pump: PumpType, path: string): readonly Finding[] {
  const { speedTable } = pump;
  if (speedTable.length === 0) return [];
  const rises = speedTable.every((point, i) => i === 0 || point.pressure > (speedTable[i - 1]?.pressure ?? 0));
  if (speedTable.length >= 2 && rises && speedTable.some((point) => point.speed > 0)) return [];
  const problem = `The speed curve of ${pump.name} cannot be followed.`;
  const remedy = 'Give at least two points with rising pressures, one of them with a speed above 0, or none at all.';
  return [planError(`${path}.speedTable`, `(list of ${speedTable.length})`, problem, remedy)];
}

/** Traps and pumps are described in a way that can be computed. */
export function equipmentRule(plan: Plan): readonly Finding[] {
  return [
    ...plan.chambers.flatMap((chamber, i) => trapFindings(chamber, `chambers.${i}`)),
    ...plan.pumps.flatMap((pump, i) => speedTableFindings(pump, `pumps.${i}`)),
  ];
}
