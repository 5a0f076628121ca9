import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LONGEST_CSV, readCsv } from '../../../lib/plan/log-text/csv-table.ts';
import { withoutGuard } from '../../../lib/plan/log-text/formula-guard.ts';
import { writeCsv } from '../../../lib/plan/log-text/write-csv.ts';

function rowsOf(text: string): readonly (readonly string[])[] {
  const table = readCsv(text);
  if (!table.ok) throw new Error(table.error.problem);
  return table.value.rows.map((row) => row.cells);
}

describe('readCsv', () => {
  it.each([
    ['commas', 'a,b\n1,2', ','],
    ['semicolons with decimal commas', 'a;b\n1,5;2,5', ';'],
    ['tabs with commas in the head', 'a\tb, c\n1\t2', '\t'],
    ['a first line that says so', '\uFEFFsep=|\r\na|b\r\n1|2', '|'],
  ])('finds %s', (_, text, separator) => {
    const table = readCsv(text);
    expect(table.ok && table.value.separator).toBe(separator);
    expect(table.ok && table.value.rows[0]?.cells).toHaveLength(2);
  });

  it('reads quoted cells as RFC 4180 has them, and inches as they stand', () => {
    expect(rowsOf('a,b\r\n"1,5 ""big""","two\r\nlines"\r\n6" pan,x\r\n')).toEqual([
      ['a', 'b'],
      ['1,5 "big"', 'two\r\nlines'],
      ['6" pan', 'x'],
    ]);
  });

  it('counts lines of the text, not rows', () => {
    const table = readCsv('a,b\n\n"x\ny",2\n\n3,4\n');
    expect(table.ok && table.value.rows.map((row) => row.line)).toEqual([1, 3, 6]);
  });

  it('names the line of a quotation mark that is never closed', () => {
    const table = readCsv('a,b\n1,2\n"3,4\n5,6');
    expect(!table.ok && table.error.problem).toContain('line 3');
  });

  it('refuses a text that is too long', () => {
    expect(readCsv('x'.repeat(LONGEST_CSV + 1)).ok).toBe(false);
  });

  it('never throws, whatever the text', () => {
    const pieces = fc.constantFrom(
      '"',
      '""',
      ',',
      ';',
      '\t',
      '\n',
      '\r',
      '\r\n',
      'sep=',
      '\uFEFF',
      'a',
      '=1',
      '\u0000',
      '__proto__',
    );
    const texts = fc.oneof(
      fc.string({ unit: 'binary' }),
      fc.array(pieces).map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(texts, (text) => {
        const table = readCsv(text);
        if (!table.ok) expect(table.error.problem.length * table.error.remedy.length).toBeGreaterThan(0);
        else for (const row of table.value.rows) expect(row.line).toBeGreaterThan(0);
      }),
    );
  });
});

describe('writeCsv', () => {
  it.each(['=HYPERLINK("x")', '+1-2', '-cmd', '@SUM(A1)', '\t=1', ' =1', '|calc'])(
    'keeps %j from being run',
    (cell) => {
      const [written] = rowsOf(`head\n${writeCsv([[cell]])}`).slice(1);
      expect(written?.[0]).toMatch(/^'/);
      expect(withoutGuard(written?.[0] ?? '')).toBe(cell);
    },
  );

  it.each(['-12.5', '3', '1e-7'])('leaves the number %s a number', (cell) => {
    expect(writeCsv([[cell]])).toBe(`${cell}\r\n`);
  });

  it('is read back as it was, cell by cell', () => {
    const cell = fc.string({ unit: 'grapheme' }).map((text) => text.trim());
    const table = fc.array(fc.tuple(cell, cell, fc.constant('x')), { minLength: 1 });
    fc.assert(
      fc.property(table, (rows) => {
        const read = rowsOf(`a,b,c\n${writeCsv(rows)}`).slice(1);
        expect(read.map((row) => row.map((text) => withoutGuard(text).trim()))).toEqual(
          rows.map((row) => row.map((text) => withoutGuard(text).trim())),
        );
      }),
    );
  });
});
