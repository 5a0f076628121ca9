import type { Finding } from '../result.ts';

/** What the command prints instead of results when the call or the plan is faulty. */
export interface FindingsJson {
  readonly format: 'rimeplan-findings';
  readonly version: 1;
  readonly findings: readonly Finding[];
}

export function findingsJson(findings: readonly Finding[]): FindingsJson {
  return { format: 'rimeplan-findings', version: 1, findings };
}
