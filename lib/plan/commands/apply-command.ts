import { fail, succeed } from '../../result.ts';
import { checkPlan } from '../check-plan.ts';
import type { Plan } from '../plan-types.ts';
import { addItem, removeItem } from './change-catalogue.ts';
import { addScenario, insertScenario, moveScenarios, removeScenarios, setScenarioFields } from './change-scenarios.ts';
import { changeQuantities, changeValues } from './change-values.ts';
import type { Command } from './command.ts';
import type { PlanChange } from './plan-change.ts';

function changed(plan: Plan, command: Command): PlanChange {
  switch (command.kind) {
    case 'setScenarioFields':
      return setScenarioFields(plan, command.changes);
    case 'setQuantities':
      return changeQuantities(plan, command.changes);
    case 'setValues':
      return changeValues(plan, command.changes);
    case 'addScenario':
      return addScenario(plan, command);
    case 'insertScenario':
      return insertScenario(plan, command.scenario, command.position);
    case 'removeScenarios':
      return removeScenarios(plan, command.ids);
    case 'moveScenarios':
      return moveScenarios(plan, command.ids, command.position);
    case 'renameScenario':
      return setScenarioFields(plan, [{ scenario: command.id, field: 'name', value: command.name }]);
    case 'addItem':
      return addItem(plan, command.list, command.from, command.id, command.name);
    case 'removeItem':
      return removeItem(plan, command.list, command.id);
    case 'setFreezer':
      return succeed({ ...plan, freezer: command.freezer });
    case 'addLogEntries':
      return succeed({ ...plan, batchLog: [...plan.batchLog, ...command.entries] });
    case 'removeLogEntries':
      return succeed({ ...plan, batchLog: plan.batchLog.filter((entry) => !command.ids.includes(entry.id)) });
  }
}

/**
 * The plan after a command, or what is wrong with it; the plan given is never changed.
 * Whatever the command does not touch is shared with the plan given, so that only what changed is computed again.
 */
export function applyCommand(plan: Plan, command: Command): PlanChange {
  const outcome = changed(plan, command);
  if (!outcome.ok || outcome.value === plan) return outcome;
  const checked = checkPlan(outcome.value);
  return checked.ok ? outcome : fail(checked.error);
}
