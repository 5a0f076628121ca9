import { expect, it } from 'vitest';
import { findBarrels } from './barrels.ts';

it.each(["export * from './a.ts';", "export { a } from './a.ts';", "import { a } from './a.ts';\nexport { a };"])(
  'reports %j',
  (text) => {
    expect(findBarrels([{ path: 'lib/index.ts', text }])).toHaveLength(1);
  },
);

it.each(['export const a = 1;', "import { a } from './a.ts';\nexport const b = a;", '', "import './a.ts';"])(
  'passes %j',
  (text) => {
    expect(findBarrels([{ path: 'lib/a.ts', text }])).toEqual([]);
  },
);
