import fc from 'fast-check';
import { expect, it } from 'vitest';
import { checkPlan } from '../../lib/plan/check-plan.ts';
import { applyEntries } from '../../lib/views/apply-entries.ts';
import { spreadBlock } from '../../lib/views/spread-block.ts';
import { parseTabSeparated, writeTabSeparated } from '../../lib/views/tab-separated.ts';
import { DEMO_COLUMNS, DEMO_STATE } from '../views/sheet-of-demo.ts';
import { hostileText } from './hostile-text.ts';
import { expectUntouched } from './untouched.ts';

const ROWS = DEMO_STATE.plan.scenarios.map((scenario) => scenario.id);
const SIZE = { rows: ROWS.length, columns: DEMO_COLUMNS.length };

const cell = fc.oneof(hostileText, fc.constantFrom('1', '2', '0', 'shared', 'own pump each', '12 %', '3 months'));
const block = fc.oneof(
  hostileText,
  fc
    .array(fc.array(cell, { maxLength: 5 }), { maxLength: 4 })
    .map((rows) => rows.map((row) => row.join('\t')).join('\r\n')),
);

it('any text on the clipboard is a block of cells', () => {
  fc.assert(
    fc.property(block, (text) => {
      const cells = parseTabSeparated(text);
      expect(cells.length).toBeGreaterThan(0);
      expect(cells.every((row) => row.length > 0 && row.every((one) => typeof one === 'string'))).toBe(true);
    }),
    { numRuns: 5000 },
  );
});

it('what is copied comes back as it was', () => {
  const text = hostileText.map((one) => one.replace(/\r\n?/g, '\n'));
  const rectangle = fc
    .integer({ min: 1, max: 5 })
    .chain((width) => fc.array(fc.array(text, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 4 }));
  fc.assert(
    fc.property(rectangle, (rows) => {
      // A single empty last cell and a line end after the last row look the same.
      fc.pre(rows.at(-1)?.join('') !== '');
      expect(parseTabSeparated(writeTabSeparated(rows))).toEqual(rows);
    }),
    { numRuns: 4500 },
  );
});

it('a pasted block leaves a plan that holds, and marks what it did not understand', () => {
  const seen = { taken: 0, rejected: 0 };
  const place = fc.record({ row: fc.nat(SIZE.rows - 1), column: fc.nat(SIZE.columns - 1) });
  fc.assert(
    fc.property(block, place, (text, at) => {
      const { cells } = spreadBlock(parseTabSeparated(text), { anchor: at, head: at }, SIZE);
      const entries = cells.map((one) => ({
        scenarioId: ROWS[one.row] ?? '',
        columnId: DEMO_COLUMNS[one.column]?.id ?? '',
        text: one.text,
      }));
      const applied = applyEntries(DEMO_STATE, entries, DEMO_COLUMNS);
      seen.taken += applied.taken;
      seen.rejected += applied.rejected;
      expect(applied.taken + applied.rejected).toBeLessThanOrEqual(entries.length);
      for (const { problem, remedy } of applied.state.rejected) expect(`${problem} ${remedy}`).toMatch(/\. .+\.$/s);
      const checked = checkPlan(JSON.parse(JSON.stringify(applied.state.plan)));
      // Entries that hold one by one may clash; the sheet then refuses the step as a whole.
      if (!checked.ok) expect(checked.error.every((finding) => finding.problem !== '')).toBe(true);
    }),
    { numRuns: 500, endOnFailure: true },
  );
  expectUntouched();
  expect(seen.taken).toBeGreaterThan(50);
  expect(seen.rejected).toBeGreaterThan(50);
});
