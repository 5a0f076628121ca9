import { expect, it } from 'vitest';
import { findUnknownKeys, findUnusedKeys } from './source-keys.ts';

const year = 1999;
const file = (text: string) => [{ path: 'lib/a.ts', text }];

it('reports a key that nothing cites', () => {
  expect(findUnusedKeys(['first-law', 'second-law'], file('// Source: first-law, eq. 2.'))).toEqual([
    'source second-law is cited nowhere',
  ]);
});

it('does not take a longer key for a shorter one', () => {
  expect(findUnusedKeys(['first-law'], file('// Source: first-law-extended.'))).toHaveLength(1);
});

it('counts a quoted key as cited', () => {
  expect(findUnusedKeys(['first-law'], file("const a = { source: 'first-law' };"))).toEqual([]);
});

it.each([
  ['after the word Source', '// Source: nobody, eq. 6.'],
  ['by its year, anywhere', `// the constant of nobody-${year} is older`],
  ['in quotes', `const a = { source: 'nobody-${year}' };`],
])('reports an unknown key %s', (_where, text) => {
  expect(findUnknownKeys(['first-law'], file(`\n${text}`))).toEqual([
    expect.stringMatching(/^lib\/a\.ts:2: unknown source nobody/),
  ]);
});

it('passes known keys and laws worked out on the spot', () => {
  const text = `// Source: first-law, eq. 1; second-${year}.\n// Source: derived.`;
  expect(findUnknownKeys(['first-law', `second-${year}`], file(text))).toEqual([]);
});
