import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { gathered } from '../../lib/io/gathered.ts';

const page = { visibilityState: 'visible' };
let frames: (() => void)[] = [];

beforeEach(() => {
  vi.useFakeTimers();
  frames = [];
  page.visibilityState = 'visible';
  vi.stubGlobal('document', page);
  vi.stubGlobal('requestAnimationFrame', (run: () => void) => frames.push(run));
});

afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

function counted() {
  let done = 0;
  const call = gathered(() => {
    done += 1;
  });
  return { call, done: () => done };
}

describe('gathered', () => {
  it('does the work of a lone call at once, and that of a crowd once, at the next frame', () => {
    const { call, done } = counted();
    call();
    expect(done()).toBe(1);
    call();
    call();
    expect(done()).toBe(1);
    for (const frame of frames.splice(0)) frame();
    expect(done()).toBe(2);
    vi.advanceTimersByTime(1000);
    call();
    expect(done()).toBe(3);
    expect(frames).toHaveLength(0);
  });

  it('goes on without frames while the page is out of sight', () => {
    page.visibilityState = 'hidden';
    const { call, done } = counted();
    call();
    call();
    call();
    expect(done()).toBe(1);
    vi.advanceTimersByTime(1000);
    expect(done()).toBe(2);
    expect(frames).toHaveLength(0);
  });
});
