// `npm run bench:editing`: how long a sheet of many rows takes from the Enter that ends an edit to the edited row's own answer – its
// computed figures drawn and no longer grey –, until the row shows that it is being worked out, and the longest task that keeps
// the page from answering while somebody types. An edit of machines runs a new week; one of money does not. Needs a build (`npm run build`) and Chromium; or give the address
// of a running page: `node .tools/editing-speed.mjs [rows] [address]`. Nothing is judged, only printed.
import { readFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { findChromium } from './chromium.mjs';
import { serve } from './serve.mjs';

const ROWS = Number(process.argv[2] ?? 50);
const EDITS = 10;
/** From one key to the next, and from the last to Enter [ms]: sixty words a minute. */
const KEY = 200;
/** How long somebody looks at an open list before choosing [ms]. */
const LOOK = 1000;
/** How long somebody looks at a cell before typing one more [ms]. */
const THOUGHT = 1500;
const ARGS = ['--no-sandbox', '--disable-gpu', '--disable-dev-shm-usage', '--disable-quic'];

/** A mix that no other row has: a little of the last product's share goes to the first. */
function ownMix(mix, at) {
  const moved = at / 8;
  return mix.map((entry, k) => ({
    ...entry,
    share: entry.share + (k === 0 ? moved : k === mix.length - 1 ? -moved : 0),
  }));
}

/** The demo with its scenarios repeated, each copy with a mix of its own, so that no two rows have a week in common. */
function longPlan(rows) {
  const plan = JSON.parse(readFileSync(new URL('../test/documents/v1-demo.json', import.meta.url), 'utf8'));
  const [today, ...others] = plan.scenarios;
  const scenarios = Array.from({ length: rows - 1 }, (_, at) => {
    const base = others[at % others.length];
    return { ...base, id: `row-${at + 1}`, name: `Row ${at + 1}`, after: null, mix: ownMix(base.mix, at) };
  });
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

/** Shows the columns of the set-up that are folded away, the other capital among them. */
async function openSetUp(page) {
  await page.locator('.ag-header-group-cell', { hasText: 'Set-up' }).locator('.ag-header-expand-icon:visible').click();
  await page.locator(cellIn(1, KINDS.money.column)).waitFor();
}

/** Waits until every row has its figures; what holds each back is still being looked for. */
async function untilFigures(page) {
  await page.waitForFunction((all) => {
    const words = document.querySelector('[data-testid="progress"]')?.textContent ?? '';
    return Number(/^(\d+) of/.exec(words)?.[1] ?? 0) >= all || /All worked out/.test(words);
  }, ROWS);
}

/** A cell of the sheet; every edit is made in another row, so that no answer is known from before. */
function cellIn(row, column) {
  return `.ag-row[row-index="${row}"] .ag-cell[col-id="${column}"]`;
}

/**
 * Makes the page watch for the next Enter or choice and then for the edited row: until it says that it is being worked out, and until its new
 * figure is drawn and no longer grey. Times count from when the browser got the key, however long the page was busy then.
 */
function watchForAnswer({ answer, cell, text }) {
  const isStale = () => /stale/.test(document.querySelector(answer)?.className ?? '');
  globalThis.answered = new Promise((resolve) => {
    const follow = ({ type, key, timeStamp }) => {
      if (type === 'keydown' && key !== 'Enter') return;
      document.removeEventListener('keydown', follow, true);
      document.removeEventListener('change', follow, true);
      let grey = null;
      const look = () => {
        const now = performance.now() - timeStamp;
        const figure = document.querySelector(answer);
        const isTaken = document.querySelector(cell)?.textContent === text;
        if (isTaken && isStale()) grey ??= now;
        if (isTaken && figure && figure.textContent !== '' && !isStale()) resolve({ grey: grey ?? now, answer: now });
        else requestAnimationFrame(look);
      };
      requestAnimationFrame(look);
    };
    document.addEventListener('keydown', follow, true);
    document.addEventListener('change', follow, true);
  });
}

/** An edit that needs another week, typed or chosen, the likeliest of them, and one that changes money alone; each with the column whose figure answers it. */
const KINDS = {
  oneMore: { column: 'chambers:mid', answer: 'batches' },
  machines: { column: 'chambers:mid', typed: '5', text: '5', answer: 'batches' },
  choice: { column: 'startPractice', text: 'all valves open', answer: 'batches' },
  money: { column: 'extraCapital', typed: '1250', text: '1,250', answer: 'capital' },
};

async function typeText(page, typed) {
  for (const key of typed) {
    await page.keyboard.press(key);
    await page.waitForTimeout(KEY);
  }
  await page.keyboard.press('Enter');
}

/** One chamber more than the row has, typed by somebody who looks at the cell first. */
async function oneMore(page, cell) {
  await page.waitForTimeout(THOUGHT);
  const text = String(Number(await page.locator(cell).textContent()) + 1);
  return { typed: text, text };
}

async function editOnce(page, row, kind) {
  const cell = cellIn(row, kind.column);
  await page.locator(cell).click();
  const { typed, text } = kind.text ? kind : await oneMore(page, cell);
  const watched = { answer: cellIn(row, kind.answer), cell, text };
  if (typed) {
    await page.evaluate(watchForAnswer, watched);
    await typeText(page, typed);
  } else {
    await page.keyboard.press('F2');
    await page.waitForTimeout(LOOK);
    await page.evaluate(watchForAnswer, watched);
    await page.locator(`${cell} select`).selectOption(text);
  }
  return page.evaluate(() => globalThis.answered);
}

async function stopWork(page) {
  const button = page.getByRole('button', { name: 'Stop', exact: true });
  if (await button.isVisible()) await button.click();
}

async function measureEdits(page, first, kind, isQuiet) {
  const times = [];
  for (let at = 0; at < EDITS; at += 1) {
    if (isQuiet) await stopWork(page);
    times.push(await editOnce(page, first + at, kind));
  }
  return times;
}

function printEdits(what, times) {
  print(
    `${what}: shown as being worked out`,
    times.map(({ grey }) => grey),
  );
  print(
    `${what}: answered`,
    times.map(({ answer }) => answer),
  );
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
  await openSetUp(page);
  await untilFigures(page);
  printEdits('money edited, bottlenecks being looked for', await measureEdits(page, 1, KINDS.money, false));
  printEdits('money edited, after a stop', await measureEdits(page, 1 + EDITS, KINDS.money, true));
  printEdits('machines edited, bottlenecks being looked for', await measureEdits(page, 1, KINDS.machines, false));
  printEdits('machines edited, after a stop', await measureEdits(page, 1 + EDITS, KINDS.machines, true));
  printEdits('one chamber more, bottlenecks being looked for', await measureEdits(page, 1, KINDS.oneMore, false));
  printEdits('machines chosen, bottlenecks being looked for', await measureEdits(page, 1, KINDS.choice, false));
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
