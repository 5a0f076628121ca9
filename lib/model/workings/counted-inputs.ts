import type { SourceKey } from '../../sources.ts';
import { chamberTypesOf, pathOf, pathsIn } from './plan-paths.ts';
import type { WorkContext } from './working.ts';

/** Laws that decide how fast a load dries. */
export const DRYING_LAWS: readonly SourceKey[] = [
  'murphy-koop-2005',
  'pikal-1984',
  'pikal-1990',
  'freeze-drying-encyclopedia',
];

/** Laws that decide what a pump has to swallow and at which pressure. */
export const VACUUM_LAWS: readonly SourceKey[] = ['knudsen-1909', 'kinetic-theory', 'iso-21360-1', 'murphy-koop-2005'];

/** Laws that decide how long freezing takes. */
export const FREEZING_LAWS: readonly SourceKey[] = ['pham-1986', 'choi-okos-1986'];

/** Values of the plan that the hours of a batch hang on most. */
export function dryingInputs({ plan, scenario }: WorkContext): string[] {
  const products = scenario.mix
    .filter((entry) => entry.share > 0)
    .map((entry) => pathOf(plan, 'products', entry.product));
  const chambers = chamberTypesOf(scenario).map((id) => pathOf(plan, 'chambers', id));
  return [
    ...products.flatMap((path) => pathsIn(path, ['load', 'driedConductivity', 'permeability', 'shelfPrimary'])),
    ...chambers.flatMap((path) => pathsIn(path, ['heatContact', 'pressureCeiling', 'leak'])),
    ...pumpInputs({ plan, scenario }),
  ];
}

/** Values of the plan that pressure and vapour at the pump hang on most. */
export function pumpInputs({ plan, scenario }: Pick<WorkContext, 'plan' | 'scenario'>): string[] {
  const pump = pathOf(plan, 'pumps', scenario.pump);
  const hose = pathOf(plan, 'hoses', scenario.hose);
  return [...pathsIn(pump, ['speed', 'ultimate']), ...pathsIn(hose, ['diameter', 'length'])];
}

/** Values of the chambers in use that decide one thing. */
export function chamberInputs({ plan, scenario }: WorkContext, keys: readonly string[]): string[] {
  return chamberTypesOf(scenario).flatMap((id) => pathsIn(pathOf(plan, 'chambers', id), keys));
}

/** Values of the crew. */
export function crewInputs(keys: readonly string[]): string[] {
  return pathsIn('crew', keys);
}
