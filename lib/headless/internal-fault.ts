import type { Finding } from '../result.ts';
import { commandFinding } from './command-finding.ts';

/** A fault of the planner itself, told without its workings. */
export function internalFault(error: unknown): Finding {
  const [reason = ''] = (error instanceof Error ? error.message : String(error)).split('\n');
  return commandFinding(
    'evaluate',
    '',
    `The planner failed: ${reason || 'no reason is known'}.`,
    'The plan is untouched; please pass it on with this message to whoever looks after the planner.',
  );
}
