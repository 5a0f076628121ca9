import type { z } from 'zod';
import type { Finding } from '../result.ts';
import { fieldAtPath } from './field-at-path.ts';
import { LIMITS } from './limits.ts';
import { shownValue, valueAt } from './raw-value.ts';

type Issue = z.core.$ZodIssue;

interface Words {
  readonly problem: string;
  readonly remedy: string;
}

const KINDS: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'a group of fields',
};

const PARTS: Readonly<Record<string, string>> = { value: 'the number', unit: 'the unit', origin: 'where it came from' };

/** The quantity field that a path into one of its parts belongs to. */
function quantityAround(path: readonly PropertyKey[]): string | undefined {
  if (!Object.hasOwn(PARTS, path.at(-1) ?? '')) return undefined;
  const parent = path.slice(0, -1).map(String).join('.');
  return fieldAtPath(parent)?.kind === 'quantity' ? parent : undefined;
}

/** The field to mark: a problem with value, unit or origin belongs to the quantity as a whole. */
function fieldPath(path: readonly PropertyKey[]): string {
  return quantityAround(path) ?? path.map(String).join('.');
}

function labelOf(path: readonly PropertyKey[]): string {
  const field = fieldAtPath(fieldPath(path));
  if (!field) return `"${path.map(String).findLast((segment) => !/^\d+$/.test(segment)) ?? 'plan'}"`;
  return quantityAround(path) ? `${field.label}: ${PARTS[String(path.at(-1))]}` : field.label;
}

function kindOf(path: readonly PropertyKey[], expected: string): string {
  const isQuantity = expected === 'object' && fieldAtPath(path.map(String).join('.'))?.kind === 'quantity';
  return isQuantity ? 'a number with its unit and where it came from' : (KINDS[expected] ?? expected);
}

function typeWords(label: string, kind: string, found: unknown): Words {
  if (found === undefined) return { problem: `${label} is missing.`, remedy: `Add it as ${kind}.` };
  return { problem: `${label} should be ${kind}.`, remedy: `Put ${kind} there.` };
}

function sizeWords(label: string, issue: Extract<Issue, { code: 'too_small' | 'too_big' }>): Words {
  const limit = issue.code === 'too_small' ? Number(issue.minimum) : Number(issue.maximum);
  const [few, side] = issue.code === 'too_small' ? ['few', 'at least'] : ['many', 'at most'];
  if (issue.origin === 'array')
    return { problem: `${label} has too ${few} entries.`, remedy: `Keep ${side} ${limit}.` };
  if (issue.origin === 'string')
    return { problem: `${label} is too long.`, remedy: `Keep ${side} ${limit} characters.` };
  return { problem: `${label} is outside what is allowed.`, remedy: `Give ${side} ${limit}.` };
}

function choiceWords(label: string, values: readonly unknown[], found: unknown): Words {
  const allowed = values.map((value) => `"${String(value)}"`).join(', ');
  const problem = found === undefined ? `${label} is missing.` : `${label} is not one of the choices.`;
  return { problem, remedy: values.length === 1 ? `It must be ${allowed}.` : `Choose one of ${allowed}.` };
}

function wordsOf(issue: Issue, found: unknown): Words {
  const label = labelOf(issue.path);
  switch (issue.code) {
    case 'custom':
      return { problem: issue.message, remedy: String(issue.params?.remedy ?? 'Change it.') };
    case 'invalid_type':
      return typeWords(label, kindOf(issue.path, issue.expected), found);
    case 'invalid_value':
      return choiceWords(label, issue.values, found);
    case 'too_small':
    case 'too_big':
      return sizeWords(label, issue);
    case 'invalid_union':
      return { problem: `${label} is of no kind known here.`, remedy: 'Use "batch" or "pressureRise".' };
    case 'invalid_format':
      return { problem: issue.message, remedy: 'Use three capital letters, such as USD.' };
    default:
      return { problem: `${label} is not as it should be.`, remedy: 'Compare it with a plan that was saved here.' };
  }
}

function unknownFields(issue: Extract<Issue, { code: 'unrecognized_keys' }>, document: unknown): readonly Finding[] {
  return issue.keys.slice(0, LIMITS.findings).map((key) => ({
    severity: 'error',
    field: [...issue.path, key].map(String).join('.'),
    value: shownValue(valueAt(document, [...issue.path, key])),
    problem: `There is no field called "${key.slice(0, 80)}" here.`,
    remedy: 'Remove it, or check the spelling.',
  }));
}

function findingsOf(issue: Issue, document: unknown): readonly Finding[] {
  if (issue.code === 'unrecognized_keys') return unknownFields(issue, document);
  const found = valueAt(document, issue.path);
  return [{ severity: 'error', field: fieldPath(issue.path), value: shownValue(found), ...wordsOf(issue, found) }];
}

/** What the schema found wrong with a document, as findings in plain words; the first of them when there are very many. */
export function issueFindings(issues: readonly Issue[], document: unknown): readonly Finding[] {
  const findings = issues.slice(0, LIMITS.findings).flatMap((issue) => findingsOf(issue, document));
  return findings.slice(0, LIMITS.findings);
}
