import { describe, expect, it } from 'vitest';
import { waitingParts, waitingWords } from '../../lib/views/waiting-parts.ts';
import { DEMO_STATE } from './sheet-of-demo.ts';

const fault = { text: 'lots', problem: 'No.', remedy: 'Other.' };

describe('parts in which entries wait', () => {
  it('are those that show them, each with how many', () => {
    const misread = ['pumps.@small.price', 'crew.wage', 'site.rent', 'freezer.price'].map((place) => ({
      place,
      ...fault,
    }));
    const rejected = [{ scenarioId: 'today', columnId: 'pump', ...fault }];
    expect(Object.fromEntries(waitingParts({ ...DEMO_STATE, misread, rejected }))).toEqual({
      scenarios: 1,
      pumps: 1,
      site: 3,
    });
    expect(waitingParts(DEMO_STATE).size).toBe(0);
  });

  it('say how many in words', () => {
    expect(waitingWords(1)).toBe('1 entry to mend');
    expect(waitingWords(2)).toBe('2 entries to mend');
  });
});
