import { describe, expect, it } from 'vitest';
import { csvText } from '../../lib/views/csv-text.ts';
import { seriesCsv } from '../../lib/views/data-series.ts';

describe('csvText', () => {
  it('writes rows with the line ends of RFC 4180', () => {
    expect(
      csvText([
        ['a', 'b'],
        [1, 2.5],
      ]),
    ).toBe('a,b\r\n1,2.5\r\n');
  });

  it('quotes what would break a row, and doubles quotes', () => {
    expect(csvText([['a,b', 'say "so"', 'two\nlines', 'semi;colon']])).toBe(
      '"a,b","say ""so""","two\nlines","semi;colon"\r\n',
    );
  });

  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1', ' =1', '=HYPERLINK("x")'])(
    'takes the formula out of the text %j',
    (text) => {
      const written = csvText([[text]]);
      expect(written.replaceAll('"', '').startsWith("'")).toBe(true);
    },
  );

  it('leaves numbers numbers, negative ones too, and none empty', () => {
    expect(csvText([[-1.5, 0, null, 0.1 + 0.2, Number.POSITIVE_INFINITY]])).toBe('-1.5,0,,0.3,\r\n');
  });

  it('puts the heads over the rows of a series', () => {
    expect(seriesCsv({ head: ['Month', 'Cash [USD]'], rows: [[0, -100]] })).toBe('Month,Cash [USD]\r\n0,-100\r\n');
  });
});
