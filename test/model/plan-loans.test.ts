import { describe, expect, it } from 'vitest';
import { planLoans } from '../../lib/model/plan-loans.ts';
import { planWith } from './edited-plan.ts';

describe('planLoans', () => {
  it('splits equipment of 400,000 as a two-lender programme does: half, four tenths, the rest your own', () => {
    // Sources and uses of such a programme, recomputed: 200,000 and 160,000 lent, 40,000 of equity [common-practice].
    const plan = planWith((document) => {
      const [bank] = document.financing.loans;
      bank.share.value = 50;
      document.financing.loans = [bank, { ...structuredClone(bank), id: 'second', name: 'Second lender' }];
      document.financing.loans[1].share.value = 40;
    });
    const lent = planLoans(plan, [{ month: 0, capital: 400_000 }]).map(({ terms }) => terms.principal);
    expect(lent).toEqual([200_000, 160_000]);
  });

  it('lends a fixed sum once and a share at every purchase, and nothing where nothing is bought', () => {
    const plan = planWith((document) => {
      const [bank] = document.financing.loans;
      const fixed = { ...structuredClone(bank), id: 'fixed', name: 'Fixed', basis: 'amount' };
      fixed.amount.value = 9000;
      document.financing.loans = [bank, fixed];
    });
    const purchases = [
      { month: 3, capital: 10_000 },
      { month: 9, capital: 20_000 },
    ];
    expect(planLoans(plan, purchases).map(({ id, terms }) => [id, terms.drawMonth, terms.principal])).toEqual([
      ['bank', 3, 8000],
      ['bank', 9, 16_000],
      ['fixed', 3, 9000],
    ]);
    expect(planLoans(plan, [{ month: 3, capital: -500 }])).toEqual([]);
    expect(planLoans(plan, [])).toEqual([]);
  });
});
