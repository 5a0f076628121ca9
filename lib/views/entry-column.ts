import type { Scenario } from '../plan/plan-types.ts';
import { fail, type Result, succeed } from '../result.ts';
import { matchWords } from './match-words.ts';
import type { TextFault } from './mix-text.ts';

/** A column in which the user enters something. All its parts are pure functions of one scenario. */
export interface EntryColumn {
  readonly id: string;
  readonly label: string;
  /** One plain sentence for the line under the sheet. */
  readonly meaning: string;
  /** Unit of the column, for its head; empty when there is none. */
  readonly unit: string;
  /** True when the cells are figures, set to the right. */
  readonly isFigure: boolean;
  /** Shown even when the group is folded. */
  readonly isHeadline: boolean;
  /** Width that fits usual content [px]. */
  readonly width: number;
  /** The words to choose from; null for free text. */
  readonly options: readonly string[] | null;
  /** What the cell shows. */
  readonly text: (scenario: Scenario) => string;
  /** What editing starts from and what is copied: plain figures without marks for thousands. */
  readonly plainText: (scenario: Scenario) => string;
  /** True when the value has no effect in this scenario, such as a group size without groups. */
  readonly isIdle: (scenario: Scenario) => boolean;
  /** The scenario with the entry taken up, or what is wrong with it. */
  readonly edit: (scenario: Scenario, text: string) => Result<Scenario, TextFault>;
  /** The scenario with the cell emptied; null when it cannot be empty. */
  readonly emptied: (scenario: Scenario) => Scenario | null;
}

/** One thing that can be chosen. */
export interface ChoiceWord<Value> {
  readonly value: Value;
  readonly label: string;
}

/** The choice a text means: its words, or a part of them that no other choice has. */
export function findChoice<Value>(text: string, choices: readonly ChoiceWord<Value>[]): Result<Value, TextFault> {
  const found = matchWords(text, choices, (choice) => choice.label);
  if (found) return succeed(found.value);
  const problem = text.trim() === '' ? 'Nothing is chosen.' : `"${text.trim()}" is not one of the choices.`;
  return fail({ problem, remedy: `Choose ${listOf(choices.map((choice) => choice.label))}.` });
}

/** "a, b or c". */
export function listOf(words: readonly string[]): string {
  if (words.length < 2) return words[0] ?? 'something';
  return `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
}
