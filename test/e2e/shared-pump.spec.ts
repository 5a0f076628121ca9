import type { Page } from '@playwright/test';
import { findBottleneck } from '../../lib/insight/find-bottleneck.ts';
import { kneeCurve } from '../../lib/insight/knee-curve.ts';
import { evaluateScenario } from '../../lib/model/evaluate-scenario.ts';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { bottleneckFlag } from '../../lib/views/bottleneck-flag.ts';
import { shownAs } from '../../lib/views/entry-columns.ts';
import { quantityText } from '../../lib/views/format-quantity.ts';
import { kneeView } from '../../lib/views/knee-view.ts';
import { paybackMonthNumber } from '../../lib/views/payback-view.ts';
import { goToFigure } from './figures.ts';
import { cellAt, enter, openSheet, untilDone } from './sheet.ts';
import { expect, test } from './strict-page.ts';

const ROW = 1;
const SCENARIO = 'three-shared';

/** The demo plan with so many chambers on the shared pump of its second row. */
function planWith(count: number): Plan {
  const scenarios = DEMO_PLAN.scenarios.map((scenario) =>
    scenario.id === SCENARIO ? { ...scenario, chambers: [{ chamber: 'mid', count }] } : scenario,
  );
  return { ...DEMO_PLAN, scenarios };
}

/** What the engine itself says of the row, as text for each column. */
function engineTexts(plan: Plan): Record<string, string> {
  const outcome = evaluateScenario(plan, SCENARIO);
  if (outcome.kind !== 'computed') throw new Error('the engine refuses the demo');
  const texts = OUTPUTS.map((output) => [
    output.id,
    quantityText(output.read(outcome.result), output.dimension, shownAs(plan)),
  ]);
  return Object.fromEntries(texts);
}

async function expectRow(page: Page, plan: Plan): Promise<void> {
  for (const [column, text] of Object.entries(engineTexts(plan))) {
    await expect(cellAt(page, ROW, column), column).toHaveText(text);
  }
  const bottleneck = findBottleneck(plan, SCENARIO);
  const count = plan.scenarios[ROW]?.chambers[0]?.count ?? 0;
  if (!bottleneck) throw new Error('the engine finds no bottleneck in the demo');
  const flag = bottleneckFlag(bottleneck, count);
  await expect(cellAt(page, ROW, 'bottleneck')).toContainText(flag.title);
  await expect(cellAt(page, ROW, 'bottleneck')).toContainText(flag.figure);
}

test('eight chambers on the pump of three change output, payback and flag to what the engine says', async ({
  page,
}) => {
  test.setTimeout(300_000);
  await openSheet(page);
  await page.getByLabel('All columns').check();
  await untilDone(page);
  await expectRow(page, planWith(3));

  await enter(page, ROW, 'chambers:mid', '8');
  await untilDone(page);
  const plan = planWith(8);
  await expectRow(page, plan);
  const before = engineTexts(planWith(3));
  const after = engineTexts(plan);
  expect(after.dryOut).not.toBe(before.dryOut);
  expect(after.payback).not.toBe(before.payback);

  // The figures under the sheet speak of the same row and say the same.
  const outcome = evaluateScenario(plan, SCENARIO);
  const payback = outcome.kind === 'computed' ? outcome.result.finance.versusToday?.payback : undefined;
  const verdict =
    payback?.kind === 'crossed'
      ? `Three on one pump pays back in month ${paybackMonthNumber(payback.months)}`
      : 'Three on one pump does not pay back';
  await page.getByLabel('Scenario the evidence is for').selectOption(SCENARIO);
  await untilDone(page);
  await expect((await goToFigure(page, 'Payback')).locator('h3')).toContainText(verdict);
  const knee = kneeView(kneeCurve(plan, SCENARIO, 10), shownAs(plan));
  await expect((await goToFigure(page, 'Chambers against output')).locator('h3')).toHaveText(knee.finding);
  await expect(
    (await goToFigure(page, 'A typical week')).locator('svg[role="img"] text', { hasText: /^8$/ }),
  ).toBeVisible();
});
