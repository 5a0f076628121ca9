import { expect, it } from 'vitest';
import { findCycles } from './cycles.ts';

const a = { path: 'lib/a.ts', text: "import { b } from './b.ts';" };
const b = { path: 'lib/b.ts', text: "import { c } from './deep/c.ts';" };
const closing = { path: 'lib/deep/c.ts', text: "import { a } from '../a.ts';" };
const closingByType = { path: 'lib/deep/c.ts', text: "import type { A } from '../a.ts';" };

it('finds a circle of three and names its members', () => {
  expect(findCycles([a, b, closing])).toEqual(['lib/a.ts > lib/b.ts > lib/deep/c.ts > lib/a.ts']);
});

it('finds a file that imports itself', () => {
  expect(findCycles([{ path: 'lib/a.ts', text: "import { a } from './a.ts';" }])).toEqual(['lib/a.ts > lib/a.ts']);
});

it('leaves a circle closed by a type alone', () => {
  expect(findCycles([a, b, closingByType])).toEqual([]);
});

it('does not take two ways to one file for a circle', () => {
  const twoWays = { path: 'lib/a.ts', text: "import './b.ts'; import './deep/c.ts';" };
  expect(findCycles([twoWays, b, { path: 'lib/deep/c.ts', text: '' }])).toEqual([]);
});
