import { describe, expect, it } from 'vitest';
import { readOptions } from '../../lib/headless/read-options.ts';

function asked(...words: readonly string[]) {
  const options = readOptions(words);
  if (!options.ok) throw new Error(JSON.stringify(options.error));
  return options.value;
}

function faults(...words: readonly string[]): readonly string[] {
  const options = readOptions(words);
  return options.ok ? [] : options.error.map(({ field, problem }) => `${field}: ${problem}`);
}

describe('readOptions', () => {
  it('takes a file, and a scenario and an output in any order and both spellings', () => {
    const all = { kind: 'evaluate', file: 'plan.json', scenario: 'Six on one pump', out: 'r.json' };
    expect(asked('plan.json', '--scenario', 'Six on one pump', '--out', 'r.json')).toEqual(all);
    expect(asked('--out=r.json', '--scenario=Six on one pump', 'plan.json')).toEqual(all);
    expect(asked('plan.json')).toEqual({ kind: 'evaluate', file: 'plan.json', scenario: null, out: null });
  });

  it('keeps an equals sign in a name, and takes a file that looks like an option after --', () => {
    expect(asked('p.json', '--scenario=a=b')).toMatchObject({ scenario: 'a=b' });
    expect(asked('--', '--plan.json')).toMatchObject({ file: '--plan.json' });
    expect(asked('p.json', '--scenario', '-3 chambers')).toMatchObject({ scenario: '-3 chambers' });
  });

  it('gives help before anything else', () => {
    expect(asked('--wrong', '--help')).toEqual({ kind: 'help' });
    expect(asked('-h')).toEqual({ kind: 'help' });
  });

  it.each([
    [[], ['PLAN.json: No plan file is named.']],
    [[''], ['PLAN.json: No plan file is named.']],
    [['a.json', 'b.json'], ['PLAN.json: More than one plan file is named.']],
    [['a.json', '--fast'], ['--fast: There is no option --fast.']],
    [['a.json', '--fast=yes'], ['--fast: There is no option --fast.']],
    [['a.json', '-x'], ['-x: There is no option -x.']],
    [['a.json', '--out'], ['--out: --out has nothing after it.']],
    [['a.json', '--scenario='], ['--scenario: --scenario has nothing after it.']],
    [['a.json', '--scenario', '--out', 'b'], ['--scenario: --scenario has nothing after it.']],
    [['a.json', '--out', 'b', '--out', 'c'], ['--out: --out is given more than once.']],
    [
      ['--fast', '--out'],
      ['--fast: There is no option --fast.', '--out: --out has nothing after it.', 'PLAN.json: No plan file is named.'],
    ],
  ])('says all that is wrong with %j', (words, expected) => {
    expect(faults(...words)).toEqual(expected);
  });
});
