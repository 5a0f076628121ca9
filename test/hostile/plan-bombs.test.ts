import { expect, it } from 'vitest';
import { parsePlan } from '../../lib/plan/parse-plan.ts';
import { planFileWords } from '../../lib/views/plan-file-words.ts';
import { smallPlanText } from './small-plan.ts';
import { expectUntouched } from './untouched.ts';

const TEXT = smallPlanText();

/** The plan with something planted behind its version. */
function planted(text: string): string {
  const at = TEXT.indexOf('"version":1,') + '"version":1,'.length;
  return `${TEXT.slice(0, at)}${text},${TEXT.slice(at)}`;
}

const TOO_MANY = 'The file holds far more entries than any plan needs.';
const TOO_DEEP = 'Fields are nested far deeper than any plan needs.';
const TOO_LARGE = 'The file has 50.0 MB; a plan has 5.0 MB at most.';

it.each<[string, () => string, string]>([
  ['50 MB of digits', () => '9'.repeat(50_000_000), TOO_LARGE],
  ['50 MB of brackets', () => '['.repeat(50_000_000), TOO_LARGE],
  ['lists in lists', () => planted(`"x":${'['.repeat(400_000)}${']'.repeat(400_000)}`), TOO_DEEP],
  ['groups in groups', () => planted(`"x":${'{"a":'.repeat(400_000)}1${'}'.repeat(400_000)}`), TOO_DEEP],
  ['a list without end', () => planted(`"x":[${'0,'.repeat(1_000_000)}0]`), TOO_MANY],
  ['a list of groups without end', () => planted(`"x":[${'{},'.repeat(600_000)}{}]`), TOO_MANY],
  ['lists of lists', () => planted(`"x":[${`[${'0,'.repeat(999)}0],`.repeat(500)}0]`), TOO_MANY],
  [
    'keys without end',
    () => planted(`"x":{${Array.from({ length: 260_000 }, (_, k) => `"${k}":0`).join()}}`),
    TOO_MANY,
  ],
])('%s', (_name, text, problem) => {
  const parsed = parsePlan(text());
  expect(parsed.ok ? [] : planFileWords(parsed.error).map((line) => line.problem)).toContain(problem);
});

it('many faults are told by the first of them', () => {
  const keys = Array.from({ length: 5000 }, (_, k) => `"k${k}":0`).join();
  const parsed = parsePlan(planted(keys));
  expect(!parsed.ok && planFileWords(parsed.error).length).toBe(200);
});

it('many names that would tamper are told by the first of them, and tamper with nothing', () => {
  const parsed = parsePlan(planted(`"x":[${'{"__proto__":{"polluted":1}},'.repeat(5000)}0]`));
  expect(!parsed.ok && planFileWords(parsed.error).length).toBe(200);
  expectUntouched();
});

it('markup and formulas in names are names', () => {
  const name = '<img src=x onerror="window.struck=true">=1+1';
  const parsed = parsePlan(TEXT.replace(/"name":"[^"]*"/, `"name":${JSON.stringify(name)}`));
  expect(parsed.ok && parsed.value.name).toBe(name);
  expectUntouched();
});
