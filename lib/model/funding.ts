import { type Cents, sumCents, toCents } from '../finance/cents.ts';
import type { Plan } from '../plan/plan-types.ts';
import type { DrawnLoan } from './plan-loans.ts';
import { stageCapital } from './scenario-capital.ts';
import type { Stage } from './scenario-stages.ts';

/** Money that comes from somewhere or goes somewhere, in whole cents, positive. */
export interface FundingLine {
  readonly label: string;
  readonly cents: Cents;
}

/** What a project is paid with and what the money is used for; both sides have the same total. */
export interface Funding {
  readonly uses: readonly FundingLine[];
  readonly sources: readonly FundingLine[];
  readonly total: Cents;
}

/** Amounts in whole cents that sum to the whole cents of their sum. */
function roundedTogether(amounts: readonly number[]): Cents[] {
  let whole = 0;
  return amounts.map((amount) => {
    const before = toCents(whole);
    whole += amount;
    return toCents(whole) - before;
  });
}

function capitalLines(plan: Plan, stages: readonly Stage[]): FundingLine[] {
  return stages.flatMap((stage) => {
    const { lines } = stageCapital(plan, stage);
    const cents = roundedTogether(lines.map((line) => line.amount));
    return lines.map((line, k) => ({ label: line.name, cents: cents[k] ?? 0 }));
  });
}

function added(lines: readonly FundingLine[]): FundingLine[] {
  const totals = new Map<string, Cents>();
  for (const { label, cents } of lines) totals.set(label, (totals.get(label) ?? 0) + cents);
  return [...totals].map(([label, cents]) => ({ label, cents })).filter((line) => line.cents !== 0);
}

/**
 * Uses and sources of all that is bought on the way to a scenario: things, works, delivery, contingency and loan fees against loans, old
 * equipment and the owner's own money, which pays what the others leave. Where loans lend more than is bought, the
 * rest stays in the business.
 * @param loans as drawn for these stages
 * @param horizon months of the plan; what is lent later is left out
 */
export function funding(plan: Plan, stages: readonly Stage[], loans: readonly DrawnLoan[], horizon: number): Funding {
  const lines = capitalLines(plan, stages);
  const drawn = loans.filter(({ terms }) => !terms.isRunning && terms.drawMonth < horizon);
  const fees = { label: 'Loan fees', cents: sumCents(drawn.map(({ terms }) => toCents(terms.fee))) };
  const bought = [...lines.filter((line) => line.cents > 0), fees];
  const lent = drawn.map(({ name, terms }) => ({ label: name, cents: toCents(terms.principal) }));
  const given = lines.filter((line) => line.cents < 0).map(({ label, cents }) => ({ label, cents: 0 - cents }));
  const missing = sumCents([...bought, ...given, ...lent].map((line, k) => (k < bought.length ? 1 : -1) * line.cents));
  const uses = added([...bought, { label: 'Kept in the business', cents: Math.max(0, 0 - missing) }]);
  const sources = added([...lent, ...given, { label: 'Your own money', cents: Math.max(0, missing) }]);
  return { uses, sources, total: sumCents(uses.map((line) => line.cents)) };
}
