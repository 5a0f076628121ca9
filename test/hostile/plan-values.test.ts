import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Loose } from '../plan/edited-demo.ts';
import { hostileValue } from './hostile-text.ts';
import { expectTakenOrTold, type Seen } from './plan-property.ts';
import { smallPlanText } from './small-plan.ts';
import { expectUntouched } from './untouched.ts';

type Path = readonly (string | number)[];

const TEXT = smallPlanText();

function pathsOf(value: unknown, path: Path = []): Path[] {
  if (typeof value !== 'object' || value === null) return [path];
  const keys: Path = Array.isArray(value) ? value.map((_, place) => place) : Object.keys(value);
  const below = keys.flatMap((key) => pathsOf((value as Loose)[key], [...path, key]));
  return path.length === 0 ? below : [path, ...below];
}

const PATHS = pathsOf(JSON.parse(TEXT));

/** Puts a value at a path, if the path still leads anywhere. */
function put(root: Loose, path: Path, value: unknown): void {
  let parent = root;
  for (const key of path.slice(0, -1)) parent = parent?.[key];
  const key = path.at(-1);
  if (parent !== null && typeof parent === 'object' && key !== undefined) parent[key] = value;
}

const anyPath = fc.nat(PATHS.length - 1).map((at) => PATHS[at] ?? []);

/** A number near one that is there: many of these pass, and must then hold all the way. */
const nudged = fc
  .tuple(anyPath, fc.constantFrom(-1, 0, 0.5, 0.999, 1.001, 2, 10, 1e6))
  .map(([path, factor]) => ({ path, factor }));

function nudge(root: Loose, { path, factor }: { path: Path; factor: number }): void {
  const found = path.reduce((node: Loose, key) => node?.[key], root);
  if (typeof found === 'number') put(root, path, found * factor);
}

it('a plan with values of any kind anywhere is sound or refused with reasons', () => {
  const seen: Seen = { taken: 0, refused: 0 };
  fc.assert(
    fc.property(
      fc.array(fc.tuple(anyPath, hostileValue), { maxLength: 2 }),
      fc.array(nudged, { maxLength: 6 }),
      (replaced, nudges) => {
        const document = JSON.parse(TEXT);
        for (const one of nudges) nudge(document, one);
        for (const [path, value] of replaced) put(document, path, value);
        expectTakenOrTold(JSON.stringify(document), seen);
      },
    ),
    { numRuns: 2000, endOnFailure: true },
  );
  expectUntouched();
  expect(seen.taken).toBeGreaterThan(200);
  expect(seen.refused).toBeGreaterThan(200);
});
