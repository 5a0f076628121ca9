import { describe, expect, it } from 'vitest';
import { readWaiting, withDraft, writeDraft, writeWaiting } from '../../lib/views/waiting-entries.ts';

const ENTRY = { scenarioId: 'a', columnId: 'pump', text: 'lots', problem: 'No.', remedy: 'Other.' };
const FIELD = { place: 'products.@soup.load', text: 'much', problem: 'No.', remedy: 'Other.' };
const NONE = { rejected: [], misread: [] };

describe('entries that wait', () => {
  it('come back as they were written', () => {
    const waiting = { rejected: [ENTRY], misread: [FIELD] };
    expect(readWaiting(writeWaiting(waiting))).toEqual(waiting);
  });

  it.each(['', 'scribble', 'null', '[]', '{"rejected":{"length":3}}', '{"rejected":[null,1,{"text":"a"}]}'])(
    'are none in %s',
    (text) => {
      expect(readWaiting(text)).toEqual(NONE);
    },
  );
});

describe('a text that was being typed', () => {
  it('waits in its cell, in the place of what waited there', () => {
    const draft = { scenarioId: 'a', columnId: 'pump', text: '3*45' };
    const { rejected } = withDraft({ ...NONE, rejected: [ENTRY] }, writeDraft(draft));
    expect(rejected).toEqual([
      { ...draft, problem: expect.stringContaining('being typed'), remedy: expect.any(String) },
    ]);
  });

  it('waits in a cell of a catalogue too', () => {
    const draft = { place: 'products.@soup.load', text: '2*' };
    const { rejected, misread } = withDraft({ rejected: [ENTRY], misread: [FIELD] }, writeDraft(draft));
    expect(rejected).toEqual([ENTRY]);
    expect(misread).toEqual([
      { ...draft, problem: expect.stringContaining('being typed'), remedy: expect.any(String) },
    ]);
  });

  it('is nothing when nothing was typed or it cannot be read', () => {
    const waiting = { ...NONE, rejected: [ENTRY] };
    expect(withDraft(waiting, writeDraft(null))).toBe(waiting);
    expect(withDraft(waiting, '{"scenarioId":1}')).toBe(waiting);
  });
});
