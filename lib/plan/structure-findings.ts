import type { Finding } from '../result.ts';
import { LIMITS } from './limits.ts';

const REFUSED_KEYS: readonly string[] = ['__proto__', 'constructor', 'prototype'];

interface Visit {
  readonly value: unknown;
  readonly path: string;
  readonly depth: number;
}

function refusedKey(path: string, key: string): Finding {
  return {
    severity: 'error',
    field: path,
    value: key,
    problem: `A field is called "${key}", a name that no plan may use.`,
    remedy: 'Remove that field; a plan saved here never has one.',
  };
}

function tooDeep(path: string): Finding {
  return {
    severity: 'error',
    field: path,
    value: '(group of fields)',
    problem: 'Fields are nested far deeper than any plan needs.',
    remedy: 'Open a file that was saved here and not changed since.',
  };
}

function tooMany(): Finding {
  return {
    severity: 'error',
    field: '',
    value: '',
    problem: 'The file holds far more entries than any plan needs.',
    remedy: 'Open a file that was saved here and not changed since.',
  };
}

/** How many entries a list or group has; looked at before they are gone through. */
function sizeOf(value: unknown): number {
  if (typeof value !== 'object' || value === null) return 0;
  return Array.isArray(value) ? value.length : Object.keys(value).length;
}

function children(visit: Visit): readonly Visit[] {
  const { value, path, depth } = visit;
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).map(([key, child]) => ({
    value: child,
    path: path === '' ? key : `${path}.${key}`,
    depth: depth + 1,
  }));
}

/**
 * What makes a freshly read document unsafe to look at any closer: names that would tamper with every object, nesting
 * without end, and so many entries that to judge each would take minutes. Walks with its own stack, so that no depth can
 * overflow it, and stops when the document is plainly no plan.
 */
export function structureFindings(document: unknown): readonly Finding[] {
  const findings: Finding[] = [];
  const waiting: Visit[] = [{ value: document, path: '', depth: 0 }];
  let room: number = LIMITS.values;
  for (let visit = waiting.pop(); visit; visit = waiting.pop()) {
    room -= sizeOf(visit.value);
    if (visit.depth > LIMITS.depth) return [...findings, tooDeep(visit.path)];
    if (room < 0) return [...findings, tooMany()];
    if (findings.length >= LIMITS.findings) return findings;
    for (const child of children(visit)) {
      const key = child.path.slice(visit.path === '' ? 0 : visit.path.length + 1);
      if (REFUSED_KEYS.includes(key)) findings.push(refusedKey(child.path, key));
      else waiting.push(child);
    }
  }
  return findings;
}
