import { expect, it } from 'vitest';
import { findLongFiles } from './file-sizes.ts';

const statements = (count: number) => 'let a = 0;\n'.repeat(count);
const table = (count: number) => `export const rows = [\n${'  { a: 1, b: 2 },\n'.repeat(count)}];\n`;

it('reports a file of 401 lines and passes one of 400', () => {
  expect(findLongFiles([{ path: 'lib/a.ts', text: statements(401) }])).toEqual(['lib/a.ts: 401 lines, at most 400']);
  expect(findLongFiles([{ path: 'lib/a.ts', text: statements(400) }])).toEqual([]);
});

it('lets a table of data be long', () => {
  expect(findLongFiles([{ path: 'lib/a.ts', text: table(600) }])).toEqual([]);
});

it('is not fooled by a table in a file that is mostly code', () => {
  expect(findLongFiles([{ path: 'lib/a.ts', text: statements(300) + table(300) }])).toHaveLength(1);
});

it('is not fooled by code inside a literal', () => {
  const text = `export const actions = {\n${'  a() {\n    return 1;\n  },\n'.repeat(150)}};\n`;
  expect(findLongFiles([{ path: 'lib/a.ts', text }])).toHaveLength(1);
});
