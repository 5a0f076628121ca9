import fc from 'fast-check';
import { expect, it } from 'vitest';
import { checkPlan } from '../../lib/plan/check-plan.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { readCsv } from '../../lib/plan/log-text/csv-table.ts';
import { withoutGuard } from '../../lib/plan/log-text/formula-guard.ts';
import { importLog } from '../../lib/plan/log-text/import-log.ts';
import { writeCsv } from '../../lib/plan/log-text/write-csv.ts';
import { csvText } from '../../lib/views/csv-text.ts';
import { hostileText } from './hostile-text.ts';
import { expectUntouched } from './untouched.ts';

/** Signs with which a text makes a spreadsheet compute, wide forms of them too. */
const RUNS = /^[\s\u3000]*[=+\-@\t\r|＝＋－＠]/;

const PLAIN_NUMBER = /^-?\d+(?:\.\d+)?(?:e-?\d+)?$/;

/** The cells as another program reads them: by the letter of RFC 4180, guards kept. */
function cellsOf(csv: string): readonly (readonly string[])[] {
  const rows: string[][] = [[]];
  const cell = /"((?:[^"]|"")*)"|([^,\r\n]*)/y;
  for (let at = 0; at < csv.length; ) {
    cell.lastIndex = at;
    const found = cell.exec(csv);
    rows.at(-1)?.push(found?.[1]?.replaceAll('""', '"') ?? found?.[2] ?? '');
    at = cell.lastIndex;
    if (csv.startsWith('\r\n', at)) rows.push([]);
    at += csv.startsWith('\r\n', at) ? 2 : 1;
  }
  return rows.slice(0, -1);
}

const table = fc
  .integer({ min: 1, max: 5 })
  .chain((width) =>
    fc.array(fc.array(hostileText, { minLength: width, maxLength: width }), { minLength: 1, maxLength: 4 }),
  );

it('no cell of a written table runs as a formula, and no cell loses a letter', () => {
  fc.assert(
    fc.property(table, (rows) => {
      for (const [written, plain] of [
        [writeCsv(rows), PLAIN_NUMBER],
        [csvText(rows), /^$/],
      ] as const) {
        const read = cellsOf(written);
        expect(read.map((row) => row.map(withoutGuard))).toEqual(rows.map((row) => row.map(withoutGuard)));
        for (const one of read.flat()) if (!plain.test(one)) expect(one).not.toMatch(RUNS);
      }
    }),
    { numRuns: 10_000, endOnFailure: true },
  );
});

const HEAD = 'date,chamber,product,wet kg,dry kg,hours,highest pressure mTorr,note';
const FIELDS = ['2026-05-03', 'Mid-size chamber', 'sweetcorn', '11.2', '2.8', '16.5', '500', 'first'];

it('any table given as a batch log is taken row by row, or told of row by row', () => {
  const seen = { taken: 0, leftOut: 0, refused: 0 };
  const row = fc.array(fc.tuple(fc.nat(7), hostileText), { maxLength: 2 }).map((changes) => {
    const cells = [...FIELDS];
    for (const [at, text] of changes) cells[at] = `"${text.replaceAll('"', '""')}"`;
    return cells.join();
  });
  const text = fc.oneof(
    { weight: 5, arbitrary: fc.array(row, { maxLength: 4 }).map((rows) => [HEAD, ...rows].join('\n')) },
    {
      weight: 1,
      arbitrary: fc
        .tuple(hostileText, fc.array(row, { maxLength: 2 }))
        .map(([head, rows]) => [head, ...rows].join('\n')),
    },
    { weight: 1, arbitrary: hostileText },
  );
  fc.assert(
    fc.property(text, (given) => {
      expect(typeof readCsv(given).ok).toBe('boolean');
      const read = importLog(given, DEMO_PLAN);
      if (!read.ok) {
        seen.refused += 1;
        expect(`${read.error.problem} ${read.error.remedy}`).toMatch(/\. .+\.$/s);
        return;
      }
      const { entries, leftOut } = read.value;
      seen.taken += entries.length;
      seen.leftOut += leftOut.length;
      for (const { faults } of leftOut) expect(faults.length).toBeGreaterThan(0);
      if (entries.length === 0) return;
      const plan = JSON.parse(JSON.stringify({ ...DEMO_PLAN, batchLog: entries }));
      if (seen.taken % 7 === 0) expect(checkPlan(plan).ok).toBe(true);
    }),
    { numRuns: 10_000, endOnFailure: true },
  );
  expectUntouched();
  expect(seen.taken).toBeGreaterThan(500);
  expect(seen.leftOut).toBeGreaterThan(500);
  expect(seen.refused).toBeGreaterThan(500);
});
