import { describe, expect, it } from 'vitest';
import { likelyEntries } from '../../lib/views/likely-entries.ts';
import { DEMO_COLUMNS, DEMO_ROWS } from './sheet-of-demo.ts';

function textsFor(scenarioId: string, columnId: string): string[] {
  return likelyEntries(DEMO_ROWS, DEMO_COLUMNS, { scenarioId, columnId }).map(({ text }) => text);
}

describe('likelyEntries', () => {
  it('are one more and one less where something is counted', () => {
    expect(textsFor('three-shared', 'chambers:mid')).toEqual(['4', '2']);
  });

  it('are never less than none', () => {
    const [row] = DEMO_ROWS;
    const count = row?.entries['chambers:mid'];
    if (!row || !count) throw new Error('no count');
    const empty = { ...row, entries: { ...row.entries, 'chambers:mid': { ...count, plainText: '0' } } };
    const likely = likelyEntries([empty], DEMO_COLUMNS, { scenarioId: row.id, columnId: 'chambers:mid' });
    expect(likely.map(({ text }) => text)).toEqual(['1']);
  });

  it('are none for amounts, choices, names and rows that are not there', () => {
    for (const columnId of ['extraCapital', 'purchaseMonth', 'pumpArrangement', 'name', 'mix', 'batches']) {
      expect(textsFor('three-shared', columnId)).toEqual([]);
    }
    expect(textsFor('nobody', 'chambers:mid')).toEqual([]);
  });
});
