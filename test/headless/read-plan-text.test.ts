import { mkdtemp, rm, symlink, truncate, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { fileFault } from '../../lib/headless/file-fault.ts';
import { isSameFile } from '../../lib/headless/is-same-file.ts';
import { readPlanText } from '../../lib/headless/read-plan-text.ts';

let folder = '';
const at = (name: string) => join(folder, name);

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'rimeplan-'));
  await writeFile(at('plan.json'), '{"name":"Früchte"}');
  await writeFile(at('huge.json'), '');
  // More than can be read into one text: it must be refused by its size, before any of it is read. Takes no room on the disk.
  await truncate(at('huge.json'), 3_000_000_000);
  await symlink(at('plan.json'), at('link.json'));
});

afterAll(() => rm(folder, { recursive: true }));

async function problemOf(name: string): Promise<string> {
  const text = await readPlanText(at(name));
  return text.ok ? '' : (text.error[0]?.problem ?? '');
}

describe('readPlanText', () => {
  it('gives what the file holds', async () => {
    expect(await readPlanText(at('plan.json'))).toEqual({ ok: true, value: '{"name":"Früchte"}' });
  });

  it('says what is wrong with a file that cannot be read', async () => {
    expect(await problemOf('gone.json')).toBe('The file could not be read: there is no such file or folder.');
    expect(await problemOf('plan.json/more')).toBe('The file could not be read: part of its path is not a folder.');
    expect(await problemOf('.')).toBe('That is a folder or a device, not a file.');
  });

  it('refuses a huge file without reading it', async () => {
    expect(await problemOf('huge.json')).toBe('The file has 3000.0 MB; a plan has 5.0 MB at most.');
  });
});

describe('isSameFile', () => {
  it('follows links and is false where there is nothing', async () => {
    expect(await isSameFile(at('plan.json'), at('link.json'))).toBe(true);
    expect(await isSameFile(at('plan.json'), at('huge.json'))).toBe(false);
    expect(await isSameFile(at('plan.json'), at('gone.json'))).toBe(false);
  });
});

describe('fileFault', () => {
  it('names a reason it has no words for by its code', () => {
    const odd = Object.assign(new Error('odd'), { code: 'EODD' });
    expect(fileFault('written', 'a', odd).problem).toBe('The file could not be written: EODD.');
    expect(fileFault('written', 'a', 'odd').problem).toBe('The file could not be written: the system refused.');
  });
});
