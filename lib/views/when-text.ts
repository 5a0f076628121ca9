const formatter = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

/** A moment as day and minute where the reader is: "25 Nov 2026, 11:15". @param moment [ms since 1970] */
export function whenText(moment: number): string {
  return formatter.format(moment);
}
