import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { firstLook } from '../../lib/views/first-look.ts';
import { matchWords } from '../../lib/views/match-words.ts';

describe('firstLook', () => {
  it('is the largest step away from today', () => {
    expect(firstLook(DEMO_PLAN)).toBe('six-shared');
  });

  it('is today when it stands alone', () => {
    expect(firstLook({ ...DEMO_PLAN, scenarios: DEMO_PLAN.scenarios.slice(0, 1) })).toBe('today');
  });
});

describe('matchWords', () => {
  const items = ['Pump', 'Pump with ballast', 'Good oil', 'Good hose'];
  const match = (text: string) => matchWords(text, items, (item) => item);

  it('prefers the very words, then a beginning, then a part', () => {
    expect(match(' PUMP ')).toBe('Pump');
    expect(match('pump with')).toBe('Pump with ballast');
    expect(match('hose')).toBe('Good hose');
  });

  it('means nothing when it could mean several, or is empty', () => {
    expect(match('good')).toBeUndefined();
    expect(match('  ')).toBeUndefined();
    expect(match('valve')).toBeUndefined();
  });
});
