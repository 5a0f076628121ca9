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

describe('gathered', () => {
  it('does the work of many calls once, at the next frame', () => {
    let done = 0;
    const call = gathered(() => {
      done += 1;
    });
    call();
    call();
    expect(done).toBe(0);
    for (const frame of frames.splice(0)) frame();
    expect(done).toBe(1);
    call();
    expect(frames).toHaveLength(1);
  });

  it('goes on without frames while the page is out of sight', () => {
    page.visibilityState = 'hidden';
    let done = 0;
    const call = gathered(() => {
      done += 1;
    });
    call();
    call();
    vi.advanceTimersByTime(1000);
    expect(done).toBe(1);
    expect(frames).toHaveLength(0);
  });
});
