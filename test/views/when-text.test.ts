import { expect, it } from 'vitest';
import { whenText } from '../../lib/views/when-text.ts';

it('tells the day and the minute', () => {
  expect(whenText(Date.UTC(2026, 10, 25, 11, 15))).toBe('25 Nov 2026, 11:15');
});
