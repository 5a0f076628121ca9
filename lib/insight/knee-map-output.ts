import type { Plan, PumpType } from '../plan/plan-types.ts';
import { machineOutput } from './machine-output.ts';
import { scenarioOf, withChambers } from './shop-variant.ts';

function fasterPump(pump: PumpType, factor: number): PumpType {
  const { speed, speedTable } = pump;
  return {
    ...pump,
    speed: { ...speed, value: speed.value * factor },
    speedTable: speedTable.map((point) => ({ ...point, speed: point.speed * factor })),
  };
}

/** The plan with one scenario's pump faster by a factor; everything else of the pump stays. */
function withPumpSpeed(plan: Plan, pumpId: string, factor: number): Plan {
  const pumps = plan.pumps.map((pump) => (pump.id === pumpId ? fasterPump(pump, factor) : pump));
  return { ...plan, pumps };
}

/**
 * Dried product a week of a number of chambers on one pump that is faster by a factor, held back by the machines alone
 * [kg/week]; null when they cannot run.
 * @param factor speed over the pump's own, > 0
 */
export function kneeMapOutput(plan: Plan, scenarioId: string, factor: number, chambers: number): number | null {
  const scenario = scenarioOf(plan, scenarioId);
  const arrangement = chambers === 1 ? 'own' : 'shared';
  return machineOutput(withPumpSpeed(plan, scenario.pump, factor), withChambers(scenario, chambers, arrangement));
}
