import type { Finding } from '../../result.ts';

/** An error at a field of the plan. */
export function planError(field: string, value: string, problem: string, remedy: string): Finding {
  return { severity: 'error', field, value, problem, remedy };
}
