// `npm test`: installs what is missing, runs every check and ends with one line, `N passed, N failed`.
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from './build.mjs';
import { ensureChromium } from './chromium.mjs';
import { installPackages } from './install.mjs';
import { ensureOffice } from './office.mjs';
import { ensurePdfReader } from './poppler.mjs';
import { runTool } from './run.mjs';
import { add, NOTHING, tallyCode, tallyPlaywright, tallyVitest } from './tally.mjs';

function readReport(path) {
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : undefined;
}

function freePort() {
  return new Promise((resolve, reject) => {
    const probe = createServer().once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}

async function checkTypes() {
  return tallyCode(await runTool('tsc', ['--noEmit', '--incremental', 'false']));
}

async function checkLint() {
  const style = await runTool('biome', ['check', '--error-on-warnings', '.']);
  const unused = await runTool('knip', []);
  return tallyCode(style || unused);
}

async function runUnitTests(folder) {
  const office = tallyProgram(await ensureOffice());
  const file = join(folder, 'vitest.json');
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${file}`];
  const code = await runTool('vitest', ['run', '--config', 'test/vitest.config.ts', ...reporters]);
  return add(tallyVitest(readReport(file), code), office);
}

async function runBrowserTests(folder) {
  const chromium = await ensureChromium();
  if (!chromium) return tallyCode(1);
  const reader = tallyProgram(await ensurePdfReader());
  const file = join(folder, 'playwright.json');
  const env = { CHROMIUM_PATH: chromium, E2E_PORT: String(await freePort()), PLAYWRIGHT_JSON_OUTPUT_FILE: file };
  const args = ['test', '--config', 'test/e2e/playwright.config.ts', '--reporter=list,json'];
  const code = await runTool('playwright', args, env);
  return add(tallyPlaywright(readReport(file), code), reader);
}

/** Tests that need a program which is not there are left out, which must not go unseen. */
function tallyProgram(path) {
  return path ? NOTHING : tallyCode(1);
}

async function stage(name, check) {
  console.log(`\n=== ${name} ===`);
  const started = Date.now();
  const tally = await check().catch((error) => {
    console.error(error);
    return tallyCode(1);
  });
  const seconds = ((Date.now() - started) / 1000).toFixed(1);
  console.log(`--- ${name}: ${tally.passed} passed, ${tally.failed} failed (${seconds} s)`);
  return tally;
}

async function runStages(folder) {
  const types = await stage('types', checkTypes);
  const lint = await stage('lint', checkLint);
  const unit = await stage('unit and reference tests', () => runUnitTests(folder));
  const built = await stage('build', async () => tallyCode(await build()));
  const soFar = [types, lint, unit, built].reduce(add, NOTHING);
  if (built.failed > 0) {
    console.log('\nThe browser tests were left out because there is no build to test.');
    return soFar;
  }
  return add(soFar, await stage('browser tests', () => runBrowserTests(folder)));
}

async function main() {
  if ((await installPackages()) !== 0) return tallyCode(1);
  const folder = mkdtempSync(join(tmpdir(), 'rimeplan-test-'));
  try {
    return await runStages(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const { passed, failed } = await main();
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
console.log(`\n${passed} passed, ${failed} failed`);
