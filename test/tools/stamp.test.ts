import { mkdirSync, mkdtempSync, renameSync, rmSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { sourceStamp } from '../../.tools/stamp.mjs';

let root = '';
const stamp = () => sourceStamp(root, ['app', 'public', 'package.json']);

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'rimeplan-stamp-'));
  mkdirSync(join(root, 'app', 'deep'), { recursive: true });
  writeFileSync(join(root, 'app', 'deep', 'page.tsx'), 'page');
  writeFileSync(join(root, 'package.json'), '{}');
});

afterEach(() => rmSync(root, { recursive: true }));

it('stays the same when nothing but the time of a file changes', () => {
  const before = stamp();
  utimesSync(join(root, 'app', 'deep', 'page.tsx'), 1, 1);
  expect(stamp()).toBe(before);
});

it('stays the same when a file changes that no build reads', () => {
  const before = stamp();
  writeFileSync(join(root, 'README.md'), 'new');
  expect(stamp()).toBe(before);
});

it.each([
  ['a content', () => writeFileSync(join(root, 'app', 'deep', 'page.tsx'), 'pagE')],
  ['a name', () => renameSync(join(root, 'app', 'deep', 'page.tsx'), join(root, 'app', 'deep', 'other.tsx'))],
  ['a new file', () => writeFileSync(join(root, 'app', 'new.tsx'), '')],
  ['a folder that was missing', () => mkdirSync(join(root, 'public')) ?? writeFileSync(join(root, 'public', 'a'), '')],
  ['a file named directly', () => writeFileSync(join(root, 'package.json'), '{ }')],
])('changes with %s', (_what, change) => {
  const before = stamp();
  change();
  expect(stamp()).not.toBe(before);
});

it('does not depend on where the project lies', () => {
  const before = stamp();
  const moved = `${root}-moved`;
  renameSync(root, moved);
  root = moved;
  expect(stamp()).toBe(before);
});
