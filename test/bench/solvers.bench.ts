import { bench, describe } from 'vitest';
import type { StepControl } from '../../lib/plant/group-advance.ts';
import { SHARED_STARTS } from '../fixtures/drying-cases.ts';
import reference from '../fixtures/drying-reference.json' with { type: 'json' };
import type { SharedStart } from '../plant/dry-together.ts';
import { builtModule } from './built-module.ts';
import type * as General from './dry-generally.ts';
import { requireNear } from './require-near.ts';
import { scipySeconds } from './scipy-time.ts';

const { dryTogether } = builtModule<typeof import('../plant/dry-together.ts')>('test/plant/dry-together.ts');
const { dryGenerally } = builtModule<typeof General>('test/bench/dry-generally.ts');

/** Steps so short that the error is that of rounding, not of stepping: parts in a million. */
const TIGHT: StepControl = { tolerance: 1e-6, longest: 60 };

/** Timed side by side: one load alone, and six chambers that press on each other. */
const TIMED = ['lone fruit', 'six on the small pump'];

function requireRight(what: string, ends: readonly number[], start: SharedStart): void {
  const right = reference.find((entry) => entry.name === start.name)?.loads ?? [];
  if (right.length !== ends.length)
    throw new Error(`${start.name}: ${ends.length} loads, ${right.length} in the reference`);
  ends.forEach((end, i) => {
    requireNear(`${start.name}, load ${i}, ${what}`, end, right[i]?.total ?? Number.NaN);
  });
}

/** Median time of a run [s]; the first third, while the code is still being translated, is not counted. */
function medianSeconds(run: () => void, runs: number): number {
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    run();
    return (performance.now() - start) / 1000;
  });
  const counted = times.slice(Math.floor(runs / 3)).sort((a, b) => a - b);
  return counted[Math.floor(counted.length / 2)] ?? Number.NaN;
}

function tellScipy(start: SharedStart): void {
  const scipy = scipySeconds(start);
  const own = medianSeconds(() => void dryTogether(start), 150);
  const words =
    scipy === null ? 'no Python with SciPy here' : `${scipy.toFixed(2)} s, ${Math.round(scipy / own)} times ours`;
  console.log(`${start.name}: SciPy's BDF at a relative tolerance of 1e-7: ${words} (${(1000 * own).toFixed(2)} ms)`);
}

for (const start of SHARED_STARTS.filter(({ name }) => TIMED.includes(name))) {
  const ends = (loads: readonly { readonly total: number }[]) => loads.map((load) => load.total);
  requireRight('own', ends(dryTogether(start).loads), start);
  requireRight('own, tight', ends(dryTogether(start, TIGHT).loads), start);
  requireRight('general', dryGenerally(start).ends, start);
  tellScipy(start);

  describe(`${start.name}, dried to the end within 0.1 %`, () => {
    bench('the engine', () => void dryTogether(start), { time: 500 });
    bench('the engine with tight steps', () => void dryTogether(start, TIGHT), { time: 500 });
    bench('a general-purpose solver on the same rates', () => void dryGenerally(start), { time: 500, iterations: 3 });
  });
}
