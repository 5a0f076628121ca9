import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';

let press: () => void = () => {};
let inTurn: typeof import('../../lib/io/in-turn.ts').inTurn;
let leaveRow: typeof import('../../lib/io/in-turn.ts').leaveRow;

beforeEach(async () => {
  vi.useFakeTimers();
  vi.stubGlobal('window', {
    addEventListener: (_: string, note: () => void) => {
      press = note;
    },
  });
  vi.resetModules();
  ({ inTurn, leaveRow } = await import('../../lib/io/in-turn.ts'));
});

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

describe('work in turn', () => {
  it('is done one piece after the other, the latest of each owner', () => {
    const done: string[] = [];
    const [a, b] = [{}, {}];
    inTurn(a, () => done.push('a, old'));
    inTurn(b, () => done.push('b'));
    inTurn(a, () => done.push('a'));
    expect(done).toEqual([]);
    vi.advanceTimersByTime(20);
    expect(done).toEqual(['a']);
    vi.advanceTimersByTime(20);
    expect(done).toEqual(['a', 'b']);
  });

  it('waits until hands rest', () => {
    const done: string[] = [];
    inTurn({}, () => done.push('a'));
    press();
    vi.advanceTimersByTime(300);
    press();
    vi.advanceTimersByTime(300);
    expect(done).toEqual([]);
    vi.advanceTimersByTime(200);
    expect(done).toEqual(['a']);
  });

  it('does not wait for ever', () => {
    const done: string[] = [];
    inTurn({}, () => done.push('a'));
    for (let k = 0; k < 60; k += 1) {
      press();
      vi.advanceTimersByTime(100);
    }
    expect(done).toEqual(['a']);
  });

  it('is dropped with its owner', () => {
    const done: string[] = [];
    const owner = {};
    inTurn(owner, () => done.push('a'));
    leaveRow(owner);
    vi.advanceTimersByTime(1000);
    inTurn({}, () => done.push('b'));
    vi.advanceTimersByTime(1000);
    expect(done).toEqual(['b']);
  });
});
