import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stepArea, stepLine } from '../../lib/views/step-path.ts';
import { binHighest, highestOf } from '../../lib/views/week-trace.ts';

describe('binHighest', () => {
  it('holds a reading until the next one', () => {
    const points = [
      { time: 0, value: 1 },
      { time: 5, value: 3 },
    ];
    expect(binHighest(points, 10, 5).map((bin) => bin.value)).toEqual([1, 1, 3, 3, 3]);
  });

  it('keeps a short peak inside a bin', () => {
    const points = [
      { time: 0, value: 1 },
      { time: 4.1, value: 9 },
      { time: 4.2, value: 2 },
    ];
    expect(binHighest(points, 10, 5).map((bin) => bin.value)).toEqual([1, 1, 9, 2, 2]);
  });

  it('has nothing before the first reading and while there is none', () => {
    const points = [
      { time: 2, value: 1 },
      { time: 4, value: null },
    ];
    expect(binHighest(points, 10, 5).map((bin) => bin.value)).toEqual([null, 1, null, null, null]);
  });

  it('never loses the highest reading', () => {
    const readings = fc.array(fc.record({ time: fc.double({ min: 0, max: 9.99, noNaN: true }), value: fc.nat(100) }), {
      minLength: 1,
    });
    fc.assert(
      fc.property(readings, fc.integer({ min: 1, max: 40 }), (points, bins) => {
        const sorted = points
          .sort((a, b) => a.time - b.time)
          // Of two readings at one time only the later counts.
          .filter((point, at, all) => all[at + 1]?.time !== point.time);
        const highest = Math.max(...binHighest(sorted, 10, bins).map((bin) => bin.value ?? 0));
        // A reading that is replaced at the very start of its bin never stood.
        expect(highest).toBe(Math.max(...sorted.map((point) => point.value)));
      }),
    );
  });
});

describe('highestOf', () => {
  it('takes the higher of several traces bin by bin', () => {
    const a = [
      { time: 0, value: 1 },
      { time: 1, value: null },
    ];
    const b = [
      { time: 0, value: 3 },
      { time: 1, value: null },
    ];
    expect(highestOf([a, b]).map((bin) => bin.value)).toEqual([3, null]);
    expect(highestOf([])).toEqual([]);
  });
});

describe('paths of steps', () => {
  const scale = { x: (time: number) => time * 10, y: (value: number) => 100 - value, end: 3 };
  const bins = [
    { time: 0, value: 10 },
    { time: 1, value: null },
    { time: 2, value: 20 },
  ];

  it('lift the line where there is no value', () => {
    expect(stepLine(bins, scale)).toBe('M0 90V90H10M20 80V80H30');
  });

  it('close the area down to its base', () => {
    expect(stepArea(bins, scale)).toBe('M0 100V90H10V100ZM20 100V80H30V100Z');
  });

  it('draw equal neighbours as one step', () => {
    expect(
      stepLine(
        [
          { time: 0, value: 10 },
          { time: 1, value: 10 },
        ],
        scale,
      ),
    ).toBe('M0 90V90H30');
  });
});
