import { fail, type Result, succeed } from '../../result.ts';
import type { TextFault } from '../mix-text.ts';
import { WEEKDAYS } from '../week-times.ts';

/** Words for several days at once. */
const SETS: Readonly<Record<string, readonly number[]>> = {
  'every day': [0, 1, 2, 3, 4, 5, 6],
  daily: [0, 1, 2, 3, 4, 5, 6],
  weekdays: [0, 1, 2, 3, 4],
  weekend: [5, 6],
  'no day': [],
  none: [],
  '': [],
};

function runText([first = 0, ...rest]: readonly number[]): string {
  const last = rest.at(-1);
  if (last === undefined) return WEEKDAYS[first] ?? '';
  return `${WEEKDAYS[first]}${rest.length > 1 ? '–' : ', '}${WEEKDAYS[last]}`;
}

/** Days (0 = Monday … 6 = Sunday) in words: "Mon–Fri", "Mon, Wed", "no day". */
export function weekdaysText(days: readonly number[]): string {
  const sorted = [...days].sort((a, b) => a - b);
  const runs: number[][] = [];
  for (const day of sorted) {
    const run = runs.at(-1);
    if (run && run.at(-1) === day - 1) run.push(day);
    else runs.push([day]);
  }
  return runs.length === 0 ? 'no day' : runs.map(runText).join(', ');
}

/** The day that a word begins with: "mo", "Monday", "mondays"; null when it is none. */
function dayOf(word: string): number | null {
  const short = word.slice(0, 3).toLowerCase();
  const found = WEEKDAYS.findIndex((day) => short.length >= 2 && day.toLowerCase().startsWith(short));
  return found < 0 ? null : found;
}

/** All days from one to another, over Sunday where need be. */
function span(first: number, last: number): number[] {
  const length = ((last - first + 7) % 7) + 1;
  return Array.from({ length }, (_, step) => (first + step) % 7);
}

/** The days of "mon" or "mon-fri"; null when they cannot be read. */
function daysOfPart(part: string): readonly number[] | null {
  const ends = part.split('-').map(dayOf);
  const [first, last = first] = ends;
  if (first === undefined || last === undefined || first === null || last === null || ends.length > 2) return null;
  return span(first, last);
}

/** The days that a text means, in order and each once: "Mon-Fri", "Mon, Wed and Sat", "every day". */
export function parseWeekdays(text: string): Result<readonly number[], TextFault> {
  const plain = text.trim().toLowerCase();
  const set = Object.hasOwn(SETS, plain) ? SETS[plain] : undefined;
  if (set) return succeed(set);
  const joined = plain.replace(/\s*(?:[-–−]|\bto\b)\s*/g, '-');
  const days: number[] = [];
  for (const part of joined.split(/[\s,;+&]+/).filter((word) => word !== '' && word !== 'and')) {
    const found = daysOfPart(part);
    if (!found) {
      const remedy = 'Write days such as Mon–Fri or Mon, Wed, Sat.';
      return fail({ problem: `"${part}" is not a day of the week.`, remedy });
    }
    days.push(...found);
  }
  return succeed([...new Set(days)].sort((a, b) => a - b));
}
