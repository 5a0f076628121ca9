import { LIMITS } from '../plan/limits.ts';
import { parsePlan } from '../plan/parse-plan.ts';
import type { PlanFileError } from '../plan/plan-file-error.ts';
import type { Plan } from '../plan/plan-types.ts';
import { fail, type Result } from '../result.ts';

/** The text of a file the user picked, as far as any reader of ours would take it: what is longer is cut and refused there. */
export function readTextFile(file: File): Promise<string> {
  return file.slice(0, LIMITS.bytes + 1).text();
}

/** The plan in a file the user picked, or why there is none. A file beyond the limit is not even read. Never throws. */
export async function readPlanFile(file: File): Promise<Result<Plan, PlanFileError>> {
  if (file.size > LIMITS.bytes) return fail({ kind: 'tooLarge', bytes: file.size, limit: LIMITS.bytes });
  try {
    return parsePlan(await file.text());
  } catch (reason) {
    return fail({ kind: 'unreadable', message: reason instanceof Error ? reason.message : String(reason) });
  }
}

/** A name that every file system takes: letters, digits and hyphens. */
export function fileNameFor(planName: string): string {
  const plain = planName
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .replace(/[^A-Za-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .toLowerCase();
  return `${plain === '' ? 'plan' : plain}.rimeplan.json`;
}

/** Hands the user a file to save. */
export function offerTextFile(name: string, text: string): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The download has begun once the click is handled; the address may go at the end of the turn.
  setTimeout(() => URL.revokeObjectURL(url), 0);
}
