import { describe, expect, it } from 'vitest';
import { findForbiddenGlobals } from './forbidden-globals.ts';

const faultsOf = (text: string, path = 'lib/model/a.ts') => findForbiddenGlobals([{ path, text }]);

describe('is reported', () => {
  it.each([
    'window.alert(1);',
    'const a = document.title;',
    'const now = Date.now();',
    'const now = new Date();',
    'const now = Date();',
    'const luck = Math.random();',
    'localStorage.clear();',
    "await fetch('a');",
    'const a = process.env.A;',
    'const a = { document };',
    'setTimeout(run, 0);',
    'const a = Math.exp(1);',
    'const a = b ** 3;',
    'const a = b ** c;',
  ])('%s', (text) => {
    expect(faultsOf(text)).toHaveLength(1);
  });
});

describe('passes', () => {
  it.each([
    'const a = plan.document;',
    'const a = { window: 3 };',
    'function a(window: number) { return window; }',
    'const { document } = state; use(document);',
    'interface A { readonly process: string; self: number }',
    'let a: Worker;',
    'const day = new Date(milliseconds);',
    '// window and document are only spoken of',
    "const a = 'window';",
    'const a = b ** 2 + 2 ** 32;',
    'const a = Math.sqrt(Math.abs(b));',
  ])('%s', (text) => {
    expect(faultsOf(text)).toEqual([]);
  });
});

it('leaves the browser edge alone and lets the command read its process', () => {
  expect(faultsOf('window.alert(Date.now());', 'lib/io/a.ts')).toEqual([]);
  expect(faultsOf('process.exitCode = 1;', 'lib/headless/a.ts')).toEqual([]);
  expect(faultsOf('window.alert(1);', 'lib/headless/a.ts')).toHaveLength(1);
  expect(faultsOf('window.alert(1);', 'components/a.tsx')).toEqual([]);
  expect(faultsOf('const digits = Math.log10(size);', 'lib/views/a.ts')).toEqual([]);
});
