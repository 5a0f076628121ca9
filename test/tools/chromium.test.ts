import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { findChromium } from '../../.tools/chromium.mjs';

const here = fileURLToPath(import.meta.url);

it('takes the first place where there is a file', () => {
  expect(findChromium([undefined, `${here}.gone`, here, '/'])).toBe(here);
});

it('says so when there is none', () => {
  expect(findChromium([`${here}.gone`])).toBeUndefined();
});
