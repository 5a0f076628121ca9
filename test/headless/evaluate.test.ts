import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, truncate, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { evaluateText } from '../../lib/headless/evaluate-text.ts';
import { smallPlan } from '../model/edited-plan.ts';
import { textOf } from '../plan/edited-demo.ts';

const ROOT = fileURLToPath(new URL('../..', import.meta.url));

interface Ended {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs the command as a user would. */
function evaluate(...words: readonly string[]): Promise<Ended> {
  const args = ['--import', 'tsx', 'lib/headless/evaluate.ts', ...words];
  return new Promise((resolve) => {
    execFile(process.execPath, args, { cwd: ROOT, encoding: 'utf8', maxBuffer: 1e8 }, (error, stdout, stderr) => {
      resolve({ code: typeof error?.code === 'number' ? error.code : error ? -1 : 0, stdout, stderr });
    });
  });
}

function expectRefused({ code, stdout, stderr }: Ended, words: string): void {
  expect(stderr).toContain(words);
  expect(stderr).not.toMatch(/^\s+at |Error:|node:internal/m);
  expect(JSON.parse(stdout)).toMatchObject({ format: 'rimeplan-findings', findings: [{ severity: 'error' }] });
  expect(code).toBe(1);
}

/** Today alone, so that there is little to work out. */
const TEXT = textOf(smallPlan((document) => document.scenarios.pop()));
const ENGINE = evaluateText('plan.json', TEXT, null);
const EXPECTED = ENGINE.ok ? ENGINE.value : null;
let folder = '';
let plan = '';

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'rimeplan-'));
  plan = join(folder, 'plan.json');
  await writeFile(plan, TEXT);
});

afterAll(() => rm(folder, { recursive: true }));

describe('the command', () => {
  it('prints what the engine gives', async () => {
    const ended = await evaluate(plan);
    expect(ended).toMatchObject({ code: 0, stderr: '' });
    expect(JSON.parse(ended.stdout)).toEqual(EXPECTED);
  });

  it('writes the scenario asked for to a file and prints nothing', async () => {
    const out = join(folder, 'results.json');
    expect(await evaluate(plan, '--scenario', 'Today', '--out', out)).toEqual({
      code: 0,
      stdout: '',
      stderr: '',
    });
    const written = JSON.parse(await readFile(out, 'utf8'));
    expect(written).toEqual(EXPECTED);
  });

  it('never overwrites the plan with its results', async () => {
    expectRefused(await evaluate(plan, '--out', join(folder, '.', 'plan.json')), 'That is the plan itself');
    expect(await readFile(plan, 'utf8')).toBe(TEXT);
  });

  it('refuses a file of 50 MB by its size alone', async () => {
    const big = join(folder, 'big.json');
    await writeFile(big, '{');
    await truncate(big, 50_000_000);
    expectRefused(await evaluate(big), 'The file has 50.0 MB; a plan has 5.0 MB at most.');
  });

  it('refuses a plan with NaN, and says where', async () => {
    const spoilt = join(folder, 'nan.json');
    await writeFile(spoilt, TEXT.replace('"value":5,', '"value":NaN,'));
    expectRefused(await evaluate(spoilt), 'The file cannot be read as a plan');
  });
});
