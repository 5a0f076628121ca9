/** Sizes beyond which a plan is refused, so that a stray file cannot freeze the page. */
export const LIMITS = {
  bytes: 5_000_000,
  depth: 40,
  values: 250_000,
  findings: 200,
  name: 80,
  note: 4000,
  cellNote: 1000,
  cellNotes: 100,
  catalogue: 60,
  scenarios: 200,
  shifts: 60,
  priceBands: 24,
  loans: 12,
  speedPoints: 60,
  batchLog: 5000,
  chambersInScenario: 24,
} as const;
