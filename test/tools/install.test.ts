import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { isInstalled } from '../../.tools/install.mjs';

type Packages = Readonly<Record<string, { readonly version: string; readonly optional?: boolean }>>;

let root = '';

function write(file: string, packages: Packages): void {
  writeFileSync(join(root, file), JSON.stringify({ packages: { '': { version: '1.0.0' }, ...packages } }));
}

beforeEach(() => {
  root = `${mkdtempSync(join(tmpdir(), 'rimeplan-install-'))}/`;
  mkdirSync(join(root, 'node_modules'));
  write('package-lock.json', {
    'node_modules/a': { version: '1.0.0' },
    'node_modules/for-another-system': { version: '1.0.0', optional: true },
  });
});

afterEach(() => rmSync(root, { recursive: true }));

it('holds when every locked package is there, those for other systems aside', () => {
  write('node_modules/.package-lock.json', { 'node_modules/a': { version: '1.0.0' } });
  expect(isInstalled(root)).toBe(true);
});

it('does not hold for another version', () => {
  write('node_modules/.package-lock.json', { 'node_modules/a': { version: '0.9.0' } });
  expect(isInstalled(root)).toBe(false);
});

it('does not hold on a fresh clone', () => {
  expect(isInstalled(root)).toBe(false);
});
