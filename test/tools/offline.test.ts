import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, it } from 'vitest';
import { finish, guarded } from '../../.tools/finish.mjs';
import { fileHashes, workerText } from '../../.tools/offline.mjs';

let out = '';

beforeEach(() => {
  out = mkdtempSync(join(tmpdir(), 'rimeplan-out-'));
  for (const folder of ['404', 'readme', '_next/static/media']) mkdirSync(join(out, folder), { recursive: true });
  writeFileSync(join(out, 'index.html'), '<html><head><script>a()</script></head></html>');
  writeFileSync(join(out, '404', 'index.html'), '<html><head></head></html>');
  writeFileSync(join(out, '_next', 'static', 'a.js'), 'a');
  writeFileSync(join(out, '_next', 'static', 'media', 'engine.worker.ts'), 'source');
  writeFileSync(join(out, '_next', 'static', 'b.js.map'), '{}');
  writeFileSync(join(out, 'readme', 'sheet.png'), 'picture');
  writeFileSync(join(out, '.stamp'), 'stamp');
});

afterEach(() => rmSync(out, { recursive: true }));

it('lists every file that a page may ask for by the address it is asked by, and no other', () => {
  finish(out);
  expect(Object.keys(fileHashes(out)).sort()).toEqual(['/', '/404/', '/_next/static/a.js']);
});

it('is another worker when a byte of any file changes, and the same otherwise', () => {
  finish(out);
  const before = readFileSync(join(out, 'service-worker.js'), 'utf8');
  expect(workerText(fileHashes(out))).toBe(before);
  writeFileSync(join(out, '_next', 'static', 'a.js'), 'b');
  const after = workerText(fileHashes(out));
  expect(after.split('\n')[0]).not.toBe(before.split('\n')[0]);
  expect(after.split('\n')[0]).toMatch(/^const VERSION = '[0-9a-f]{16}';$/);
});

it('hashes the pages as they are sent, with their policy inside', () => {
  const plain = readFileSync(join(out, 'index.html'), 'utf8');
  finish(out);
  const sent = readFileSync(join(out, 'index.html'), 'utf8');
  expect(sent).toBe(guarded(plain));
  expect(sent).toMatch(
    /^<html><head><meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src/,
  );
  // Browsers refuse this directive inside a page, and say so in the console.
  expect(sent).not.toContain('frame-ancestors');
});
