import type { RawObject } from './raw-value.ts';

/** Turns a document of version `from` into one of version `from + 1`. The schema judges the outcome. */
export interface Migration {
  readonly from: number;
  readonly upgrade: (document: RawObject) => RawObject;
}

/** The steps from the first version to the present one, in order; none yet, as there has been one version only. */
export const MIGRATIONS: readonly Migration[] = [];

/**
 * A document brought to version `target` step by step.
 * @throws RangeError when a step is missing, which is a mistake in the list and not in the document.
 */
export function migrate(document: RawObject, found: number, target: number, steps: readonly Migration[]): RawObject {
  let current = document;
  for (let version = found; version < target; version += 1) {
    const step = steps.find((candidate) => candidate.from === version);
    if (!step) throw new RangeError(`no migration from version ${version} on the way from ${found} to ${target}`);
    current = { ...step.upgrade(current), version: version + 1 };
  }
  return current;
}
