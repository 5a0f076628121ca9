import { describe, expect, it } from 'vitest';
import { SOURCES } from '../lib/sources.ts';
import { findBarrels } from './architecture/barrels.ts';
import { findCycles } from './architecture/cycles.ts';
import { findLongFiles } from './architecture/file-sizes.ts';
import { findForbiddenGlobals } from './architecture/forbidden-globals.ts';
import { findLongFunctions, medianFunctionLines } from './architecture/function-sizes.ts';
import { findHtmlSinks } from './architecture/html-sinks.ts';
import { findImportFaults } from './architecture/import-rules.ts';
import { listProjectFiles, readProjectFiles } from './architecture/project-files.ts';
import { findForbiddenReach } from './architecture/reach.ts';
import { findUnknownKeys, findUnusedKeys } from './architecture/source-keys.ts';
import { findLeaks, findOddFileNames, findStrayTopLevel } from './architecture/tidiness.ts';

// The rules themselves are tested on small bad examples in test/architecture/*.test.ts.

const MEDIAN_LIMIT = 10;

const paths = listProjectFiles();
const isCode = (path: string) => /\.tsx?$/.test(path);
const product = readProjectFiles(paths, (path) => /^(?:lib|components|app)\//.test(path) && isCode(path));
const tests = readProjectFiles(paths, (path) => path.startsWith('test/') && isCode(path));
const citing = [...product, ...tests].filter(
  (file) => file.path !== 'lib/sources.ts' && !file.path.startsWith('test/architecture/'),
);

describe('the project', () => {
  it('is seen by these checks', () => {
    expect(product.length).toBeGreaterThan(10);
    expect(tests.length).toBeGreaterThan(10);
  });

  it('imports downward only and keeps each package in its place', () => {
    expect(findImportFaults(product)).toEqual([]);
  });

  it('leaves the simulation to its workers', () => {
    const isEngine = (path: string) => path === 'lib/plant/simulate-shop.ts';
    expect(findForbiddenReach(product, ['app/layout.tsx', 'app/page.tsx'], isEngine)).toEqual([]);
  });

  it('has no import circle', () => {
    expect(findCycles([...product, ...tests])).toEqual([]);
  });

  it('has no barrel', () => {
    expect(findBarrels([...product, ...tests])).toEqual([]);
  });

  it('has no long file except tables of data', () => {
    expect(findLongFiles([...product, ...tests])).toEqual([]);
  });

  it('has no long function', () => {
    expect(findLongFunctions(product)).toEqual([]);
  });

  it(`has functions with a median below ${MEDIAN_LIMIT} lines`, () => {
    expect(medianFunctionLines(product)).toBeLessThan(MEDIAN_LIMIT);
  });

  it('computes without browser, clock or chance', () => {
    expect(findForbiddenGlobals(product)).toEqual([]);
  });

  it('makes neither markup nor code of any text', () => {
    expect(findHtmlSinks(product)).toEqual([]);
  });

  it('cites every source of the bibliography and none besides', () => {
    const keys = Object.keys(SOURCES);
    expect([...findUnusedKeys(keys, citing), ...findUnknownKeys(keys, citing)]).toEqual([]);
  });

  it('keeps its top level short', () => {
    expect(findStrayTopLevel(paths)).toEqual([]);
  });

  it('names its files in lower case with hyphens', () => {
    expect(findOddFileNames([...product, ...tests].map((file) => file.path))).toEqual([]);
  });

  it('tells nothing of one machine and leaves no work for later', () => {
    const text = /\.(?:tsx?|mjs|js|json|css|md|svg|ya?ml|sh|html)$|^\.[^/]+$|^\.ci\//;
    expect(findLeaks(readProjectFiles(paths, (path) => text.test(path)))).toEqual([]);
  });
});
