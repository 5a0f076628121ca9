import { describe, expect, it } from 'vitest';
import { MIGRATIONS, type Migration, migrate } from '../../lib/plan/migrate.ts';
import { PLAN_VERSION } from '../../lib/plan/schema.ts';

const STEPS: readonly Migration[] = [
  { from: 2, upgrade: (document) => ({ ...document, b: `${document.a} and more` }) },
  { from: 1, upgrade: (document) => ({ ...document, a: 'renamed', old: undefined }) },
];

describe('migrate', () => {
  it('goes up one version at a time, each step seeing the last', () => {
    expect(migrate({ version: 1, old: 'x' }, 1, 3, STEPS)).toEqual({ version: 3, a: 'renamed', b: 'renamed and more' });
  });

  it('starts where the document is and leaves it unchanged', () => {
    const document = Object.freeze({ version: 2, a: 'kept' });
    expect(migrate(document, 2, 3, STEPS)).toEqual({ version: 3, a: 'kept', b: 'kept and more' });
    expect(migrate(document, 2, 2, STEPS)).toBe(document);
  });

  it('throws when a step is missing', () => {
    expect(() => migrate({ version: 1 }, 1, 4, STEPS)).toThrow(RangeError);
  });

  it('has a step from every past version', () => {
    const past = Array.from({ length: PLAN_VERSION - 1 }, (_, i) => i + 1);
    expect(MIGRATIONS.map((step) => step.from)).toEqual(past);
  });
});
