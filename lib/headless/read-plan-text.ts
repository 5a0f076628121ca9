import { readFile, stat } from 'node:fs/promises';
import { LIMITS } from '../plan/limits.ts';
import { type Finding, fail, type Result, succeed } from '../result.ts';
import { commandFinding } from './command-finding.ts';
import { fileFault } from './file-fault.ts';
import { planFileFindings } from './plan-file-findings.ts';

function notAFile(path: string): Finding {
  return commandFinding(path, '', 'That is a folder or a device, not a file.', 'Give the file of a saved plan.');
}

/** Text of a plan's file. Its size is looked at first, so that a huge file is refused without being read. */
export async function readPlanText(path: string): Promise<Result<string, readonly Finding[]>> {
  try {
    const about = await stat(path);
    if (!about.isFile()) return fail([notAFile(path)]);
    if (about.size > LIMITS.bytes) {
      return fail(planFileFindings(path, { kind: 'tooLarge', bytes: about.size, limit: LIMITS.bytes }));
    }
    return succeed(await readFile(path, 'utf8'));
  } catch (error) {
    return fail([fileFault('read', path, error)]);
  }
}
