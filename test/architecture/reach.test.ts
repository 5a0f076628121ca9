import { expect, it } from 'vitest';
import { findForbiddenReach } from './reach.ts';

const isEngine = (path: string) => path.startsWith('lib/plant/');

const page = (text: string) => ({ path: 'app/page.tsx', text });
const middle = (text: string) => ({ path: 'lib/views/middle.ts', text });
const engine = { path: 'lib/plant/engine.ts', text: 'export const run = 1;' };

it('follows statements and calls, and tells the way', () => {
  const files = [
    page("import('../lib/views/middle.ts');"),
    middle("import { run } from '../plant/engine.ts';"),
    engine,
  ];
  expect(findForbiddenReach(files, ['app/page.tsx'], isEngine)).toEqual([
    'app/page.tsx > lib/views/middle.ts > lib/plant/engine.ts',
  ]);
});

it('does not mind types, workers and circles', () => {
  const files = [
    page("import '../lib/views/middle.ts';"),
    middle(
      "import type { Run } from '../plant/engine.ts'; import '../../app/page.tsx'; new Worker(new URL('../plant/engine.ts', import.meta.url));",
    ),
    engine,
  ];
  expect(findForbiddenReach(files, ['app/page.tsx'], isEngine)).toEqual([]);
});
