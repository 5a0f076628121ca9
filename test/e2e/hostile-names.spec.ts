import { readFile } from 'node:fs/promises';
import type { Page } from '@playwright/test';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { serialisePlan } from '../../lib/plan/serialise-plan.ts';
import { goToFigure } from './figures.ts';
import { cellAt, openSheet } from './sheet.ts';
import { expect, test } from './strict-page.ts';

/*
 * Names full of markup, in every place where a plan has a name. Should one become markup, the picture would be asked for and
 * the strict page would complain; should a handler run, the title would change.
 */

const MARKUP = '<img src=struck onerror="document.title=1">';
const CLOSING = '"></title></style></script><script>document.title=2</script>';

function named<Item extends { readonly name: string }>(items: readonly Item[]): Item[] {
  return items.map((item, place) => ({ ...item, name: `${MARKUP} ${place}` }));
}

function hostilePlan(): Plan {
  const { site, crew, scenarios } = DEMO_PLAN;
  return {
    ...DEMO_PLAN,
    name: `${MARKUP} plan`,
    site: { ...site, shopName: `${MARKUP} shop` },
    crew: { ...crew, patterns: named(crew.patterns) },
    products: named(DEMO_PLAN.products),
    chambers: named(DEMO_PLAN.chambers),
    pumps: named(DEMO_PLAN.pumps),
    hoses: named(DEMO_PLAN.hoses),
    scenarios: named(scenarios.slice(0, 2)).map((scenario) => ({ ...scenario, note: CLOSING })),
    batchLog: DEMO_PLAN.batchLog.map((entry) => ({ ...entry, note: CLOSING })),
  };
}

async function openHostile(page: Page): Promise<void> {
  await openSheet(page);
  const buffer = Buffer.from(serialisePlan(hostilePlan()));
  await page.getByTestId('open-file').setInputFiles({ name: `${MARKUP}.json`, mimeType: 'application/json', buffer });
  await expect(cellAt(page, 1, 'name')).toContainText(`${MARKUP} 1`);
}

/** Nothing of a name has become an element, and no handler has run. */
async function expectOnlyText(page: Page): Promise<void> {
  await expect(page.locator('img[src*="struck"], [onerror], [onload]')).toHaveCount(0);
  await expect(page).toHaveTitle('Rimeplan');
}

/** Elements and attributes of a picture through which it could do anything but be looked at. */
function oddParts(page: Page, svg: string): Promise<string[]> {
  return page.evaluate((text) => {
    const parts = [...new DOMParser().parseFromString(text, 'image/svg+xml').querySelectorAll('*')];
    const names = parts.flatMap((part) => [part.localName, ...part.getAttributeNames().map((name) => `@${name}`)]);
    return names.filter((name) =>
      /^(?:img|image|script|foreignObject|a|use|style|parsererror|@on.*|@.*href)$/i.test(name),
    );
  }, svg);
}

test('markup in names is text in the sheet, in explanations, in figures and in what they save', async ({ page }) => {
  test.setTimeout(300_000);
  await openHostile(page);
  await expect(cellAt(page, 1, 'cost.total')).toHaveText(/^\d/, { timeout: 120_000 });
  await cellAt(page, 1, 'cost.total').click();
  await page.keyboard.press('Control+Enter');
  await expect(page.getByRole('dialog')).toContainText(MARKUP);
  await expectOnlyText(page);
  await page.keyboard.press('Escape');

  const figure = await goToFigure(page, 'What a batch costs');
  await expect(figure).toContainText('img src=struck');
  await figure.locator('svg').first().hover();
  await figure.getByText('figures', { exact: false }).first().hover();
  await expectOnlyText(page);
  const download = page.waitForEvent('download');
  await figure.getByRole('button', { name: 'Save as SVG' }).click();
  const svg = await readFile(await (await download).path(), 'utf8');
  expect(svg).toContain('&lt;img src=struck');
  expect(await oddParts(page, svg)).toEqual([]);

  await page.getByRole('button', { name: 'Plans', exact: true }).click();
  await expect(page.getByRole('dialog')).toContainText(MARKUP);
  await expectOnlyText(page);
});

test('markup in names is text in every part of the plan', async ({ page }) => {
  test.setTimeout(300_000);
  await openHostile(page);
  for (const tab of await page.getByRole('tab').all()) {
    await tab.click();
    await expect(page.getByRole('tabpanel').getByRole('heading').first()).toBeVisible();
    const cell = page.getByRole('gridcell').first();
    if (await cell.isVisible()) await cell.click();
    await expectOnlyText(page);
  }
});

test('a file with markup for a name and markup in its faults is refused in text', async ({ page }) => {
  await openSheet(page);
  const text = serialisePlan(hostilePlan()).replace('"version": 1,', `"version": 1, ${JSON.stringify(MARKUP)}: 1,`);
  const buffer = Buffer.from(text);
  await page.getByTestId('open-file').setInputFiles({ name: `${MARKUP}.json`, mimeType: 'application/json', buffer });
  await expect(page.getByRole('dialog')).toContainText(`There is no field called "${MARKUP}" here.`);
  await expectOnlyText(page);
  await page.keyboard.press('Escape');
  await expect(cellAt(page, 5, 'name')).toContainText('Four, mostly candy');
});
