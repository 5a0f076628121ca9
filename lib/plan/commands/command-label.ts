import { CATALOGUE_NOUN } from '../mentions.ts';
import type { Command } from './command.ts';

function counted(count: number, one: string, many = `${one}s`): string {
  return count === 1 ? one : `${count} ${many}`;
}

/** What a command does, in a few words for the undo button. */
export function commandLabel(command: Command): string {
  switch (command.kind) {
    case 'setScenarioFields':
    case 'setQuantities':
    case 'setValues':
      return `change ${counted(command.changes.length, 'cell')}`;
    case 'addScenario':
      return `add ${command.name}`;
    case 'insertScenario':
      return `add ${command.scenario.name}`;
    case 'removeScenarios':
      return `remove ${counted(command.ids.length, 'scenario')}`;
    case 'moveScenarios':
      return `move ${counted(command.ids.length, 'scenario')}`;
    case 'renameScenario':
      return `rename to ${command.name}`;
    case 'addItem':
      return `add ${CATALOGUE_NOUN[command.list]} ${command.name}`;
    case 'removeItem':
      return `remove ${CATALOGUE_NOUN[command.list]}`;
    case 'setFreezer':
      return command.freezer === null ? 'remove freezer' : 'set freezer';
    case 'addLogEntries':
      return `log ${counted(command.entries.length, 'entry', 'entries')}`;
    case 'removeLogEntries':
      return `remove ${counted(command.ids.length, 'entry', 'entries')} from the log`;
  }
}
