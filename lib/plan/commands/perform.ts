import { type Finding, type Result, succeed } from '../../result.ts';
import { type History, recordStep } from '../history.ts';
import { applyCommand } from './apply-command.ts';
import type { Command } from './command.ts';
import { commandLabel } from './command-label.ts';

/** The history after a command, as one step that can be undone, or what is wrong with the command. */
export function perform(history: History, command: Command): Result<History, readonly Finding[]> {
  const outcome = applyCommand(history.present, command);
  return outcome.ok ? succeed(recordStep(history, outcome.value, commandLabel(command))) : outcome;
}
