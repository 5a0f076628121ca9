import { expect, it } from 'vitest';
import { findLeaks, findOddFileNames, findStrayTopLevel } from './tidiness.ts';

const leaksOf = (text: string) => findLeaks([{ path: 'lib/a.ts', text }]);

it('reports names that do not belong at the top', () => {
  expect(findStrayTopLevel(['lib/a.ts', '.ci/run', 'scripts/a.sh', 'notes.md', 'notes.md'])).toEqual([
    'notes.md',
    'scripts',
  ]);
});

it('reports file names that are not in lower case with hyphens', () => {
  expect(findOddFileNames(['lib/a/IceLaw.ts', 'lib/a/ice_law.ts', 'lib/a/ice.old.ts'])).toHaveLength(3);
  expect(findOddFileNames(['lib/ice-law.ts', 'test/ice-law.test.ts', 'lib/io/run.worker.ts', 'app/page.tsx'])).toEqual(
    [],
  );
});

it.each([
  ['a path of one machine', `see ${['', 'home', 'someone', 'notes.md'].join('/')}`],
  ['a path of one machine', `'${['', 'tmp', 'a'].join('/')}'`],
  ['the host of a package registry', `https://${['registry', 'example', 'org'].join('.')}/a`],
  ['work left for later', `// ${'TO'}${'DO'} tidy up`],
])('reports %s', (what, text) => {
  expect(leaksOf(`\n${text}`)).toEqual([`lib/a.ts:2: ${what}`]);
});

it.each(['the work/rest ratio', "import a from '../home/a.ts'", 'https://example.org/work/a', 'm/tmp/s', '// to do'])(
  'passes %s',
  (text) => {
    expect(leaksOf(text)).toEqual([]);
  },
);
