import { describe, expect, it } from 'vitest';
import { findLongFunctions, medianFunctionLines } from './function-sizes.ts';

/** Text of a function with this many lines in all. */
const lines = (count: number, head: string) => `${head} {\n${'  step();\n'.repeat(count - 2)}}\n`;

describe('a function of 61 lines is reported', () => {
  it.each([
    ['a declaration', lines(61, 'function a()')],
    ['an arrow', lines(61, 'const a = () =>')],
    ['a method', `class A {\n${lines(61, 'a()')}}`],
    ['one inside a literal', `const table = { a: ${lines(61, 'function ()')}};`],
  ])('%s', (_what, text) => {
    const faults = findLongFunctions([{ path: 'lib/a.ts', text }]);
    expect(faults).toHaveLength(1);
    expect(faults[0]).toContain('a has 61 lines, at most 60');
  });

  it('one without a name', () => {
    expect(findLongFunctions([{ path: 'lib/a.ts', text: lines(61, 'export default function ()') }])).toHaveLength(1);
  });
});

it('passes a function of 60 lines whose remarks come on top', () => {
  const text = `/** What it does.\n${' * More.\n'.repeat(30)} */\n${lines(60, 'function a()')}`;
  expect(findLongFunctions([{ path: 'lib/a.ts', text }])).toEqual([]);
});

it('lets a component have 80 lines, but not a hook or a helper', () => {
  const at = (path: string, count: number, head: string) => findLongFunctions([{ path, text: lines(count, head) }]);
  expect(at('components/a.tsx', 80, 'function Panel()')).toEqual([]);
  expect(at('components/a.tsx', 81, 'function Panel()')).toHaveLength(1);
  expect(at('components/a.tsx', 61, 'function usePanel()')).toHaveLength(1);
  expect(at('lib/a.ts', 61, 'function Panel()')).toHaveLength(1);
});

it('takes the median over the functions that have a name', () => {
  const text = [3, 5, 40].map((count) => lines(count, `function f${count}()`)).join('');
  expect(medianFunctionLines([{ path: 'lib/a.ts', text }])).toBe(5);
  expect(medianFunctionLines([{ path: 'lib/a.ts', text: text + lines(8, 'function g()') }])).toBe(6.5);
  expect(medianFunctionLines([{ path: 'lib/a.ts', text: `${text}run(() => 1); run(() => 2);` }])).toBe(5);
});
