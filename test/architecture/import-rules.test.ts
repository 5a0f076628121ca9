import { describe, expect, it } from 'vitest';
import { findImportFaults } from './import-rules.ts';

/** Faults of one file with this text, in a project that holds the usual targets. */
function faultsOf(path: string, text: string): string[] {
  const targets = [
    'lib/result.ts',
    'lib/units/convert.ts',
    'lib/physics/ice.ts',
    'lib/cost/oil.ts',
    'lib/finance/rate.ts',
    'lib/plant/week.ts',
    'lib/model/evaluate.ts',
    'lib/model/outputs.ts',
    'lib/plan/schema.ts',
    'lib/views/rows.ts',
    'lib/io/store.ts',
    'components/ui/button.tsx',
    'test/helper.ts',
  ].map((target) => ({ path: target, text: '' }));
  return findImportFaults([...targets.filter((target) => target.path !== path), { path, text }]);
}

describe('downward imports pass', () => {
  it.each([
    ['lib/physics/gas.ts', "import { ice } from './ice.ts';"],
    ['lib/plant/load.ts', "import { ice } from '../physics/ice.ts';"],
    ['lib/model/parts.ts', "import { oil } from '../cost/oil.ts'; import { rate } from '../finance/rate.ts';"],
    ['lib/views/costs.ts', "import type { Result } from '../model/evaluate.ts';"],
    ['lib/views/columns.ts', "import { OUTPUTS } from '../model/outputs.ts';"],
    ['components/shell/shell.tsx', "import { rows } from '../../lib/views/rows.ts'; import { useState } from 'react';"],
    ['components/sheet/sheet.tsx', "import { AgGridReact } from 'ag-grid-react';"],
    ['app/page.tsx', "import { Button } from '../components/ui/button.tsx'; import './globals.css';"],
    ['lib/headless/evaluate.ts', "import { readFileSync } from 'node:fs'; import { e } from '../model/evaluate.ts';"],
  ])('%s: %s', (path, text) => {
    expect(faultsOf(path, text)).toEqual([]);
  });
});

describe('other imports are reported', () => {
  it.each([
    ['upward', 'lib/physics/gas.ts', "import { week } from '../plant/week.ts';", 'must not import lib/plant'],
    ['upward, of a type', 'lib/physics/gas.ts', "import type { W } from '../plant/week.ts';", 'must not import'],
    ['sideways', 'lib/cost/pay.ts', "import { rate } from '../finance/rate.ts';", 'must not import lib/finance'],
    [
      'the engine from a view',
      'lib/views/a.ts',
      "import { e } from '../model/evaluate.ts';",
      'only types of lib/model',
    ],
    [
      'the engine from a component',
      'components/a/b.tsx',
      "import { e } from '../../lib/model/evaluate.ts';",
      'only types',
    ],
    ['half of it a value', 'lib/views/a.ts', "import { type R, e } from '../model/evaluate.ts';", 'only types'],
    ['by a call', 'lib/views/a.ts', "await import('../io/store.ts');", 'must not import lib/io'],
    ['by a re-export', 'lib/views/a.ts', "export { s } from '../io/store.ts';", 'must not import lib/io'],
    ['by a type in place', 'lib/plant/a.ts', "let a: import('../model/evaluate.ts').A;", 'must not import lib/model'],
    ['tests from the product', 'lib/plant/a.ts', "import { h } from '../../test/helper.ts';", 'must not import test'],
    ['the edge from the command', 'lib/headless/a.ts', "import { s } from '../io/store.ts';", 'must not import lib/io'],
    ['a route past the components', 'app/page.tsx', "import { r } from '../lib/views/rows.ts';", 'must not import'],
    ['react in lib', 'lib/views/a.ts', "import { useMemo } from 'react';", 'belongs only in components'],
    ['the grid outside the sheet', 'components/shell/a.tsx', "import { A } from 'ag-grid-react';", 'components/sheet'],
    ['charts outside the charts', 'components/shell/a.tsx', "import { A } from 'recharts';", 'components/charts'],
    ['a part of a package', 'lib/plan/a.ts', "import a from 'next/link';", 'package next belongs'],
    ['node in the engine', 'lib/model/a.ts', "import { readFileSync } from 'node:fs';", 'package node belongs'],
    ['a package nobody knows', 'lib/model/a.ts', "import a from '@some/thing/part';", 'package @some/thing is not'],
    ['without the ending', 'lib/plant/a.ts', "import { ice } from '../physics/ice';", 'with its ending'],
    [
      'from a folder nobody knows',
      'lib/extra/a.ts',
      "import { r } from '../result.ts';",
      'lib/extra is not in the table',
    ],
  ])('%s', (_what, path, text, message) => {
    const faults = faultsOf(path, text);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain(`${path}:1: `);
    expect(faults[0]).toContain(message);
  });
});
