import type { Finding } from '../result.ts';

/** A finding as one line: where, what stands there, what is wrong, what mends it. */
function lineOf({ field, value, problem, remedy }: Finding): string {
  const place = value === '' || value === field ? field : `${field} (${value})`;
  return `${place}: ${problem} ${remedy}`;
}

/** Findings in plain words, a line each. Control characters, which a file may hold, are shown as blanks. */
export function findingLines(findings: readonly Finding[]): readonly string[] {
  return findings.map((finding) => lineOf(finding).replace(/\p{Cc}+/gu, ' '));
}
