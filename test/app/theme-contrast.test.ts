import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

type Scheme = 'light' | 'dark';

const css = readFileSync(new URL('../../app/globals.css', import.meta.url), 'utf8');

const tokens = new Map(
  [...css.matchAll(/--([\w-]+): light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\);/g)].map(([, name, light, dark]) => [
    name ?? '',
    { light: light ?? '', dark: dark ?? '' },
  ]),
);

function colour(name: string, scheme: Scheme): string {
  const token = tokens.get(name);
  if (!token) throw new Error(`no colour --${name} in app/globals.css`);
  return token[scheme];
}

/** Share of the light that an sRGB channel of 0–255 gives off: WCAG 2.2, definition of relative luminance. */
function linear(channel: number): number {
  const share = channel / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
}

function luminance(hex: string): number {
  const channel = (from: number) => linear(Number.parseInt(hex.slice(from, from + 2), 16));
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

/** Contrast ratio of two colours, from 1 to 21: WCAG 2.2, definition of contrast ratio. */
function contrast(first: string, second: string): number {
  const [one, other] = [luminance(first), luminance(second)];
  return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
}

const GROUNDS = ['page', 'panel', 'sunken', 'raised', 'hover', 'selected'];
const TEXT = ['ink', 'ink-soft', 'ink-faint', 'accent', 'accent-strong', 'good', 'warn', 'bad', 'guess', 'stale'];
const STATES = ['good', 'warn', 'bad', 'guess'];
const SHAPES = ['line-control', 'focus', ...[1, 2, 3, 4, 5, 6, 7, 8].map((index) => `series-${index}`)];

const pairs = [
  ...TEXT.flatMap((text) => GROUNDS.map((ground) => ({ front: text, ground, least: 4.5 }))),
  ...STATES.flatMap((state) => [state, 'ink'].map((text) => ({ front: text, ground: `${state}-ground`, least: 4.5 }))),
  ...SHAPES.flatMap((shape) => GROUNDS.map((ground) => ({ front: shape, ground, least: 3 }))),
  ...['accent', 'accent-strong'].map((ground) => ({ front: 'on-accent', ground, least: 4.5 })),
];

it('measures contrast as the guideline does', () => {
  expect(contrast('#ffffff', '#000000')).toBeCloseTo(21, 10);
  // The grey at the edge of what passes on white, known from the guideline's explanations (from memory).
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2);
  expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
});

describe.each(['light', 'dark'] as const)('in the %s scheme', (scheme) => {
  it('every text, control and series stands out from every ground it lies on', () => {
    const weak = pairs
      .map(({ front, ground, least }) => ({
        front,
        ground,
        least,
        got: contrast(colour(front, scheme), colour(ground, scheme)),
      }))
      .filter(({ got, least }) => got < least);
    expect(weak).toEqual([]);
  });
});

it('the ratio noted beside a colour is the one it has', () => {
  const notes = [...css.matchAll(/--([\w-]+): light-dark\(.*\); \/\* (\d+\.\d) \/ (\d+\.\d) \*\//g)];
  expect(notes).toHaveLength(TEXT.length + SHAPES.length);
  for (const [, name = '', light, dark] of notes) {
    expect(contrast(colour(name, 'light'), colour('panel', 'light')).toFixed(1), name).toBe(light);
    expect(contrast(colour(name, 'dark'), colour('panel', 'dark')).toFixed(1), name).toBe(dark);
  }
});

it('the browser is told the colour that the page has', () => {
  const layout = readFileSync(new URL('../../app/layout.tsx', import.meta.url), 'utf8');
  expect(layout).toContain(`light)', color: '${colour('page', 'light')}'`);
  expect(layout).toContain(`dark)', color: '${colour('page', 'dark')}'`);
});
