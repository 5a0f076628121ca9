import type { OpenOptions, OptionSearch } from '../../insight/options/option-search.ts';
import type { Unfit } from '../../insight/options/option-types.ts';
import { countOf, formatFixed } from '../format-number.ts';
import { quantityWithUnit, type ShownAs } from '../format-quantity.ts';
import { UNFIT_WORDS } from './option-words.ts';

/** How far a search is, for its words. */
export interface SearchStanding {
  readonly status: 'idle' | 'listing' | 'running' | 'done' | 'stopped' | 'noToday' | 'failed';
  readonly search: OptionSearch | null;
  /** Share of the space that has been gone through, 0–1. */
  readonly listed: number;
  readonly worked: number;
  readonly open: OpenOptions;
}

/** How much of what it is at is done, 0–1: going through the space, then working options out. */
export function searchProgress({ status, search, listed, worked, open }: SearchStanding): number {
  if (status === 'listing' || !search) return listed;
  const all = worked + search.outclassed + open.count;
  return all > 0 ? 1 - open.count / all : 1;
}

/** Why options fell out, the most frequent reason first: "328 cost more than the budget". */
export function fallenOut({ ruledOut, unfit, outclassed }: OptionSearch): string[] {
  const reasons = Object.keys(UNFIT_WORDS) as Unfit[];
  const early: Readonly<Partial<Record<Unfit, number>>> = ruledOut;
  const counted = reasons.map((reason) => ({
    count: unfit[reason] + (early[reason] ?? 0),
    words: UNFIT_WORDS[reason],
  }));
  const behind = { count: outclassed, words: 'cannot bring as much as something no dearer that was found' };
  return [...counted, behind]
    .filter(({ count }) => count > 0)
    .sort((a, b) => b.count - a.count)
    .map(({ count, words }) => `${formatFixed(count, 0)} ${words}`);
}

function sumOf(counts: Readonly<Record<string, number>>): number {
  return Object.values(counts).reduce((sum, count) => sum + count, 0);
}

/** How many ways were left out without running their weeks, and why none of the best can be among them; empty when none was. */
export function safetyWords({ ruledOut, outclassed }: OptionSearch): string {
  const broken = sumOf(ruledOut);
  if (broken + outclassed === 0) return '';
  const lead = `${countOf(broken + outclassed, 'way')} left out without running the weeks, which is safe:`;
  const limits = `what ${countOf(broken, 'way')} would need, known from your lists, is beyond a limit above`;
  const behind = `for ${formatFixed(outclassed, 0)} even a ceiling that no week can pass – every batch as quick as heat can make it, people always there, no current to pay – is below something no dearer that was worked out`;
  const reasons = [...(broken > 0 ? [limits] : []), ...(outclassed > 0 ? [behind] : [])];
  return `${lead} ${reasons.join('; ')}.`;
}

function perYear(value: number, shown: ShownAs): string {
  return `${quantityWithUnit(Math.round(value / 100) * 100, 'money', shown)} a year`;
}

/** Whether what is shown is the best there is, and if not, what may be missing. */
export function proofWords({ status, open }: SearchStanding, shown: ShownAs): string {
  if (status === 'done')
    return 'Nothing is left to look at: no way within these limits is both cheaper and better than one on the line.';
  const left = `${countOf(open.count, 'way')} not looked at`;
  if (open.estimate === null || open.ceiling === null) return `Not proven yet: ${left}.`;
  return `Not proven yet: ${left}. The most promising looks like ${perYear(open.estimate, shown)}, a rough guess that is often too high; none can bring more than ${perYear(open.ceiling, shown)}.`;
}

/** What is going on, in one line. */
export function statusWords({ status, search, worked }: SearchStanding): string {
  const of = `${formatFixed(worked, 0)} of ${countOf(search?.all ?? 0, 'way')}`;
  switch (status) {
    case 'idle':
      return '';
    case 'listing':
      return 'Going through the ways to set up the shop …';
    case 'running':
      return `${of} worked out so far, the promising ones first.`;
    case 'done':
      return `Finished: ${of} worked out week by week.`;
    case 'stopped':
      return search ? `Stopped: ${of} worked out.` : 'Stopped before anything was worked out.';
    case 'noToday':
      return 'Today’s shop cannot run as it is, and everything is judged against it. Its row in the sheet says why.';
    case 'failed':
      return 'It broke off. Try again, or ask for less.';
  }
}
