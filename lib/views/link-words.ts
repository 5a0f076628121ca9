import type { PlanLinkFault } from '../plan/plan-link-fault.ts';
import { formatFixed } from './format-number.ts';
import { type FileFaultLine, planFileWords } from './plan-file-words.ts';

function line(problem: string, remedy: string): FileFaultLine[] {
  return [{ where: '', problem, remedy }];
}

/** Why a link could not be opened or made, and what mends it, in plain words. */
export function linkWords(fault: PlanLinkFault): readonly FileFaultLine[] {
  switch (fault.kind) {
    case 'tooLong': {
      const sizes = `${formatFixed(fault.characters, 0)} characters; a link may have ${formatFixed(fault.limit, 0)}`;
      return line(`The plan takes ${sizes}.`, 'Save the plan as a file and pass that on.');
    }
    case 'otherForm':
      return line(
        'The link was made by another version of this planner.',
        'Reload the page to get the newest planner.',
      );
    case 'damaged':
      return line(
        'The link is damaged: part of it is missing or changed.',
        'Ask for the link again, or for the plan as a file. Chat and mail programs sometimes cut long links.',
      );
    case 'file':
      return planFileWords(fault.error);
  }
}
