import { fail, type Result, succeed } from '../result.ts';
import { checkPlan } from './check-plan.ts';
import { findJsonFault } from './json-fault.ts';
import { LIMITS } from './limits.ts';
import { MIGRATIONS, migrate } from './migrate.ts';
import type { PlanFileError } from './plan-file-error.ts';
import type { Plan } from './plan-types.ts';
import { isRawObject, type RawObject } from './raw-value.ts';
import { PLAN_FORMAT, PLAN_VERSION } from './schema.ts';
import { structureFindings } from './structure-findings.ts';

/**
 * The plan in the text of a file or link, or why there is none. Never throws, whatever the text; all findings are collected.
 * Plans of past versions are brought up to the present one.
 */
export function parsePlan(text: string): Result<Plan, PlanFileError> {
  const readable = readJson(text);
  if (!readable.ok) return readable;
  const findings = structureFindings(readable.value);
  if (findings.length > 0) return fail({ kind: 'invalid', findings });
  const current = currentDocument(readable.value);
  if (!current.ok) return current;
  const checked = checkPlan(current.value);
  return checked.ok ? checked : fail({ kind: 'invalid', findings: checked.error });
}

function readJson(text: string): Result<unknown, PlanFileError> {
  const bytes = text.length > LIMITS.bytes ? text.length : new TextEncoder().encode(text).length;
  if (bytes > LIMITS.bytes) return fail({ kind: 'tooLarge', bytes, limit: LIMITS.bytes });
  const body = text.replace(/^\uFEFF/, '');
  if (body.trim() === '') return fail({ kind: 'empty' });
  const fault = findJsonFault(body);
  if (fault) return fail({ kind: 'notJson', ...lineAndColumn(body, fault.offset), message: fault.message });
  return succeed(JSON.parse(body));
}

function lineAndColumn(text: string, offset: number): { readonly line: number; readonly column: number } {
  const before = text.slice(0, offset);
  const lines = before.split('\n');
  return { line: lines.length, column: (lines.at(-1) ?? '').length + 1 };
}

function currentDocument(document: unknown): Result<RawObject, PlanFileError> {
  if (!isRawObject(document) || document.format !== PLAN_FORMAT) return fail({ kind: 'notAPlan' });
  const { version } = document;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) return fail({ kind: 'notAPlan' });
  if (version > PLAN_VERSION) return fail({ kind: 'versionTooNew', found: version, known: PLAN_VERSION });
  return succeed(migrate(document, version, PLAN_VERSION, MIGRATIONS));
}
