import { SHARED_STARTS } from '../fixtures/drying-cases.ts';
import reference from '../fixtures/drying-reference.json' with { type: 'json' };
import { dryTogether, type SharedStart } from '../plant/dry-together.ts';
import { percent } from './accuracy-table.ts';

function off(value: number, exact: number): number {
  return Math.abs(value / exact - 1);
}

function lineOf(start: SharedStart): string {
  const exact = reference.find(({ name }) => name === start.name);
  if (!exact) throw new Error(`no reference for ${start.name}`);
  const own = dryTogether(start);
  const times = own.loads.map((load, i) => off(load.total, exact.loads[i]?.total ?? Number.NaN));
  const peak = off(own.peakManifold, exact.peakManifold);
  return `| ${start.name} | ${own.loads.length} | ${percent(Math.max(...times))} | ${percent(peak)} | ${own.steps} |`;
}

/** How far the engine's steps stray from an independent integration of the same equations, in Markdown. */
export function stepAccuracyTable(): readonly string[] {
  return [
    '| Drying to the end | Loads | Worst error of the time | Of the highest pump inlet pressure | Steps |',
    '| --- | ---: | ---: | ---: | ---: |',
    ...SHARED_STARTS.map(lineOf),
  ];
}
