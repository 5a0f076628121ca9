import { build } from 'esbuild';
import { evaluateScenario } from '../../lib/model/evaluate-scenario.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { expect, test } from './strict-page.ts';

/** The engine as one script that leaves `evaluateScenario` and the demo behind. */
async function engineScript(): Promise<string> {
  const contents = `
    export { evaluateScenario } from './lib/model/evaluate-scenario.ts';
    export { DEMO_PLAN } from './lib/plan/demo-plan.ts';
  `;
  const bundle = await build({
    stdin: { contents, resolveDir: process.cwd(), loader: 'ts' },
    bundle: true,
    format: 'iife',
    globalName: 'engine',
    write: false,
  });
  return bundle.outputFiles[0]?.text ?? '';
}

/** Every scenario of the demo, last first, as text: JSON writes a double so that reading it gives the same double. */
const ALL_BACKWARDS = `JSON.stringify(
  engine.DEMO_PLAN.scenarios.toReversed().map(({ id }) => engine.evaluateScenario(engine.DEMO_PLAN, id)).toReversed(),
)`;

test('the browser and the command line give the same figures to the last bit, in any order of scenarios', async ({
  page,
}) => {
  const there = await page.evaluate(`${await engineScript()};${ALL_BACKWARDS}`);
  const here = JSON.stringify(DEMO_PLAN.scenarios.map(({ id }) => evaluateScenario(DEMO_PLAN, id)));
  expect(String(there).length).toBeGreaterThan(100_000);
  expect(there === here).toBe(true);
});
