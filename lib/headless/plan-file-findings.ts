import type { PlanFileError } from '../plan/plan-file-error.ts';
import type { Finding } from '../result.ts';
import { commandFinding } from './command-finding.ts';

const SAVED_HERE = 'Give a plan that was saved by the planner.';

function megabytes(bytes: number): string {
  return `${(bytes / 1e6).toFixed(1)} MB`;
}

/** Why a file holds no plan that can be worked out, as findings. */
export function planFileFindings(file: string, error: PlanFileError): readonly Finding[] {
  const one = (value: string, problem: string, remedy = SAVED_HERE) => [commandFinding(file, value, problem, remedy)];
  switch (error.kind) {
    case 'empty':
      return one('', 'The file is empty.');
    case 'unreadable':
      return one('', `The file could not be read: ${error.message}`);
    case 'tooLarge':
      return one(
        megabytes(error.bytes),
        `The file has ${megabytes(error.bytes)}; a plan has ${megabytes(error.limit)} at most.`,
      );
    case 'notJson':
      return one(
        `line ${error.line}, column ${error.column}`,
        `The file cannot be read as a plan: ${error.message}.`,
        'If it was edited by hand, mend that place.',
      );
    case 'notAPlan':
      return one('', 'The file is no plan of this planner.');
    case 'versionTooNew':
      return one(
        `version ${error.found}`,
        `The plan was saved by a newer planner: version ${error.found}, and this one knows up to ${error.known}.`,
        'Use the newer planner.',
      );
    case 'invalid':
      return error.findings;
  }
}
