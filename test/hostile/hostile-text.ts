import fc from 'fast-check';

/** Texts that programs have stumbled over: markup, formulas, names of every object, odd letters, odd numbers, many of one. */
const ODDITIES = [
  '',
  ' ',
  '\u0000',
  '\uFEFF',
  '\uD800',
  '\u202Egnirts',
  'NaN',
  'Infinity',
  '-0',
  '1e999',
  '0x7f',
  '9'.repeat(400),
  '<img src=x onerror="window.struck=true">',
  '<script>window.struck=true</script>',
  '"><svg onload=window.struck=true>',
  'javascript:window.struck=true',
  '=HYPERLINK("http://other.invalid","x")',
  "+cmd|' /C calc'!A0",
  '-2+3',
  '@SUM(A1:A9)',
  '\t=1+1',
  '\r=1+1',
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  '{{7*7}}',
  '../../etc/passwd',
  "'; DROP TABLE plans; --",
  '%00%0a',
  '\\u0041',
  '"',
  '""',
  '"unclosed',
  '('.repeat(180),
  ',;\t|\n\r\n',
] as const;

export const oddText: fc.Arbitrary<string> = fc.constantFrom(...ODDITIES);

/** Any text, with the odd ones frequent. */
export const hostileText: fc.Arbitrary<string> = fc.oneof(
  oddText,
  fc.string({ maxLength: 30 }),
  fc.string({ unit: 'binary', maxLength: 30 }),
  fc.tuple(oddText, oddText).map(([a, b]) => a + b),
);

/** Any value that JSON may hold where another was expected. */
export const hostileValue: fc.Arbitrary<unknown> = fc.oneof(
  hostileText,
  fc.constantFrom(null, true, false, 0, -0, -1, 1e308, -1e308, 5e-324, 2 ** 53, 0.1 + 0.2, [], {}, [[]], [null], {
    value: null,
  }),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.jsonValue({ maxDepth: 3 }),
);
