import type { Finding } from '../result.ts';

/** Something wrong with how the command was called or with its files. `field` is the word of the command it lies in. */
export function commandFinding(field: string, value: string, problem: string, remedy: string): Finding {
  return { severity: 'error', field, value, problem, remedy };
}
