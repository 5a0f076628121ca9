// `npm run bench:editing`: how long a sheet of many rows takes from an edit to the edited row's answer, and the longest task
// that keeps the page from answering while somebody types. Needs a build (`npm run build`) and Chromium; or give the address
// of a running page: `node .tools/editing-speed.mjs [rows] [address]`. Nothing is judged, only printed.
import { readFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { findChromium } from './chromium.mjs';
import { serve } from './serve.mjs';

const ROWS = Number(process.argv[2] ?? 50);
const EDITS = 10;
const ARGS = ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage', '--disable-quic'];

/** The demo with its scenarios repeated, each copy with another purchase month, so that no two rows are the same. */
function longPlan(rows) {
  const plan = JSON.parse(readFileSync(new URL('../test/documents/v1-demo.json', import.meta.url), 'utf8'));
  const [today, ...others] = plan.scenarios;
  const scenarios = Array.from({ length: rows - 1 }, (_, at) => ({
    ...others[at % others.length],
    id: `row-${at + 1}`,
    name: `Row ${at + 1}`,
    after: null,
    purchaseMonth: Math.floor(at / others.length),
  }));
  return JSON.stringify({ ...plan, name: `${rows} rows`, scenarios: [today, ...scenarios] });
}

function median(values) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** Writes down every task of more than 50 ms in the page, and how long each key takes until it is drawn. */
function watchTasks() {
  globalThis.longTasks = [];
  globalThis.keyDelays = [];
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) globalThis.longTasks.push(entry.duration);
  }).observe({ type: 'longtask' });
  new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) if (entry.name === 'keydown') globalThis.keyDelays.push(entry.duration);
  }).observe({ type: 'event', durationThreshold: 16 });
}

async function takeNotes(page) {
  return page.evaluate(() => {
    const notes = { tasks: globalThis.longTasks.splice(0), keys: globalThis.keyDelays.splice(0) };
    return notes;
  });
}

async function openPlan(page, address) {
  await page.goto(address);
  await page.getByTestId('progress').waitFor();
  const name = 'many-rows.json';
  await page
    .getByTestId('open-file')
    .setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(longPlan(ROWS)) });
  await page.locator('.ag-cell', { hasText: 'Row 1' }).first().waitFor();
}

/** A cell of the sheet; every edit is made in another row, so that no answer is known from before. */
function cellIn(row, column) {
  return `.ag-row[row-index="${row}"] .ag-cell[col-id="${column}"]`;
}

/** Waits in the page until the edited row's answer is there and fresh; resolves to the time since the key was pressed. */
function waitForAnswer({ answer, cell, text }) {
  const started = performance.now();
  return new Promise((resolve) => {
    const look = () => {
      const figure = document.querySelector(answer);
      const isTaken = document.querySelector(cell)?.textContent === text;
      const isFresh = figure && figure.textContent !== '' && !/stale/.test(figure.className);
      if (isTaken && isFresh) resolve(performance.now() - started);
      else requestAnimationFrame(look);
    };
    look();
  });
}

async function editOnce(page, row) {
  const cell = cellIn(row, 'chambers:mid');
  await page.locator(cell).click();
  await page.keyboard.type('5');
  const answered = page.evaluate(waitForAnswer, { answer: cellIn(row, 'batches'), cell, text: '5' });
  await page.keyboard.press('Enter');
  return answered;
}

async function stopWork(page) {
  const button = page.getByRole('button', { name: 'Stop', exact: true });
  if (await button.isVisible()) await button.click();
}

async function measureEdits(page, first, isQuiet) {
  const times = [];
  for (let at = 0; at < EDITS; at += 1) {
    if (isQuiet) await stopWork(page);
    times.push(await editOnce(page, first + at));
  }
  return times;
}

async function measureTyping(page) {
  await takeNotes(page);
  for (let at = 0; at < 6; at += 1) {
    await page.locator(cellIn(1 + at, 'chambers:mid')).click();
    await page.keyboard.type('1+1+1', { delay: 60 });
    await page.keyboard.press('Enter');
  }
  return takeNotes(page);
}

function print(what, values, unit = 'ms') {
  const [middle, most] = [median(values), Math.max(0, ...values)].map((value) => Math.round(value));
  console.log(
    `${what}: median ${Number.isNaN(middle) ? '–' : middle} ${unit}, longest ${most} ${unit} (${values.length})`,
  );
}

async function measure(page, address) {
  await page.addInitScript(watchTasks);
  await openPlan(page, address);
  console.log(`${ROWS} rows; ${await page.evaluate(() => navigator.hardwareConcurrency)} cores`);
  print('edit to the row’s answer, the other rows being worked out', await measureEdits(page, 1, false));
  print('edit to the row’s answer, after a stop', await measureEdits(page, 1 + EDITS, true));
  const typing = await measureTyping(page);
  print('key to picture while typing, all above 16', typing.keys);
  print('tasks above 50 ms while typing', typing.tasks);
  const start = await page.evaluate(() => performance.now());
  for (let at = 0; at < 20; at += 1) await page.keyboard.press(at % 2 === 0 ? 'Shift+ArrowDown' : 'ArrowRight');
  const moved = await takeNotes(page);
  print('tasks above 50 ms while moving about', moved.tasks);
  console.log(`20 moves: ${Math.round((await page.evaluate(() => performance.now())) - start)} ms`);
}

async function main() {
  const given = process.argv[3];
  const server = given ? null : await serve(0);
  const address = given ?? `http://127.0.0.1:${server.address().port}/`;
  const browser = await chromium.launch({ executablePath: findChromium(), args: ARGS });
  try {
    const page = await browser.newPage();
    page.setDefaultTimeout(120_000);
    await measure(page, address);
  } finally {
    await browser.close();
    server?.close();
  }
}

await main();
