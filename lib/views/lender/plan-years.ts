/** A span of months: from the first to before the last. */
export type YearSpan = readonly [from: number, to: number];

/** Years of the plan as spans of months; the last may be short. */
export function yearsOf(months: number): readonly YearSpan[] {
  return Array.from({ length: Math.ceil(months / 12) }, (_, year) => [12 * year, Math.min(months, 12 * year + 12)]);
}

/** "Year 2"; with its length where it is short. */
export function yearName([from, to]: YearSpan): string {
  const name = `Year ${from / 12 + 1}`;
  return to - from === 12 ? name : `${name}, ${to - from} months`;
}

/** So many years stand beside each other on a page. */
const YEARS_ABREAST = 7;

/** Years in rows as long as a page is wide. */
export function abreast<Item>(items: readonly Item[]): readonly (readonly Item[])[] {
  const count = Math.ceil(items.length / YEARS_ABREAST);
  return Array.from({ length: count }, (_, k) => items.slice(k * YEARS_ABREAST, (k + 1) * YEARS_ABREAST));
}

/** Sum of what happens in a year. */
export function sumOfYear(series: readonly number[], [from, to]: YearSpan): number {
  return series.slice(from, to).reduce((all, value) => all + value, 0);
}
