import type { PlanFileError } from '../plan/plan-file-error.ts';
import { formatFixed } from './format-number.ts';

/** One line of the reasons why a file was not opened. */
export interface FileFaultLine {
  readonly where: string;
  readonly problem: string;
  readonly remedy: string;
}

function megabytes(bytes: number): string {
  return `${formatFixed(bytes / 1e6, 1)} MB`;
}

function line(problem: string, remedy: string, where = ''): FileFaultLine[] {
  return [{ where, problem, remedy }];
}

/** Why a file could not be opened, and what mends it, in plain words. */
export function planFileWords(error: PlanFileError): readonly FileFaultLine[] {
  switch (error.kind) {
    case 'empty':
      return line('The file is empty.', 'Choose a plan that was saved from here.');
    case 'unreadable':
      return line(
        `The file could not be read: ${error.message}`,
        'Look whether it is still there, and choose it again.',
      );
    case 'tooLarge':
      return line(
        `The file has ${megabytes(error.bytes)}; a plan has ${megabytes(error.limit)} at most.`,
        'Choose a plan that was saved from here.',
      );
    case 'notJson':
      return line(
        `The file is not readable as a plan: ${error.message}.`,
        'If it was edited by hand, mend that place.',
        `line ${error.line}, column ${error.column}`,
      );
    case 'notAPlan':
      return line('The file is no plan of this planner.', 'Choose a plan that was saved from here.');
    case 'versionTooNew':
      return line(
        `The plan was saved by a newer planner (version ${error.found}; this one knows up to ${error.known}).`,
        'Reload the page to get the newer planner.',
      );
    case 'invalid':
      return error.findings.map(({ field, value, problem, remedy }) => ({
        where: value === '' ? field : `${field} (${value})`,
        problem,
        remedy,
      }));
  }
}
