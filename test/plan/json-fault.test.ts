import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findJsonFault } from '../../lib/plan/json-fault.ts';

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('findJsonFault', () => {
  it.each([
    ['{"a": 1,}', 8, 'a name in double quotes was expected here'],
    ['{"a" 1}', 5, 'a colon was expected here'],
    ['[1 2]', 3, 'a comma or a closing bracket was expected here'],
    ['[1,]', 3, 'a value was expected here'],
    ['{a: 1}', 1, 'a name in double quotes or a closing } was expected here'],
    ['{"a": "b', 6, 'this text has no closing quote'],
    ['{"a": "b\n"}', 8, 'a line break or control sign stands inside quotes'],
    ['"\\x"', 1, 'a backslash is followed by a sign it cannot stand before'],
    ['{"a": 1', 7, 'the text ends too early'],
    ['{} {}', 3, 'the text should have ended here'],
    ['[1}', 2, 'a comma or a closing bracket was expected here'],
    ['NaN', 0, 'a value was expected here'],
    ['01', 1, 'the text should have ended here'],
  ])('%j breaks at %d', (text, offset, message) => {
    expect(findJsonFault(text)).toEqual({ offset, message });
  });

  it('agrees with the engine on what is JSON', () => {
    const fragment = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"a"',
      '"',
      '\\',
      '\\u00e9',
      '1',
      '-',
      '0.5',
      'e3',
      'true',
      'null',
      ' ',
      '\n',
      'x',
    );
    fc.assert(
      fc.property(
        fc.array(fragment, { maxLength: 12 }).map((parts) => parts.join('')),
        (text) => {
          expect(findJsonFault(text) === undefined).toBe(isJson(text));
        },
      ),
      { numRuns: 5000 },
    );
  });

  it('agrees with the engine on JSON with one sign changed', () => {
    fc.assert(
      fc.property(fc.json(), fc.nat(), fc.string({ maxLength: 1 }), (text, at, sign) => {
        const place = at % (text.length + 1);
        const changed = text.slice(0, place) + sign + text.slice(place + 1);
        expect(findJsonFault(changed) === undefined).toBe(isJson(changed));
      }),
      { numRuns: 2000 },
    );
  });

  it('takes any depth', () => {
    expect(findJsonFault('['.repeat(500_000))?.message).toBe('the text ends too early');
  });
});
