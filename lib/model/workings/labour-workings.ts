import { fixedTerm, inputTerm, worked, workedTerm } from './terms.ts';
import { handsOnWorking, onShiftTerm } from './throughput-workings.ts';
import type { Term, WorkContext, Working } from './working.ts';

const HOUR: Term = fixedTerm(
  { label: 'An hour', symbol: 'h', value: 3600, dimension: 'time' },
  'Wages are paid by the hour.',
);

function handsOnTerm(context: WorkContext, symbol: string): Term {
  const { handsOn } = context.result.account.labour;
  return workedTerm({ label: 'Hands-on time a week', symbol, value: handsOn, dimension: 'timePerWeek' }, () =>
    handsOnWorking(context),
  );
}

function paidTimeWorking(context: WorkContext): Working {
  const owner = inputTerm(context.plan, 'crew.ownerAtChambers', 'o');
  if (!context.plan.crew.guaranteed) {
    return worked(
      'only hours worked are paid, those of the owner taken off',
      'larger of t − o and 0',
      [handsOnTerm(context, 't'), owner],
      ([t = 0, o = 0]) => Math.max(0, t - o),
    );
  }
  return worked(
    'hours on shift are paid, and work beyond them, those of the owner taken off',
    'largest of s − o, t − o and 0',
    [onShiftTerm(context, 's'), handsOnTerm(context, 't'), owner],
    ([s = 0, t = 0, o = 0]) => Math.max(0, s - o, t - o),
  );
}

/** Paid work of a week. */
export function labourTerm(context: WorkContext, symbol: string): Term {
  const { plan, result } = context;
  const { labour } = result.account;
  const paid = workedTerm(
    { label: 'Paid time a week', symbol: 't', value: labour.paidTime, dimension: 'timePerWeek' },
    () => paidTimeWorking(context),
  );
  return workedTerm({ label: 'Labour a week', symbol, value: labour.paid, dimension: 'money' }, () =>
    worked(
      'paid hours × wage × (1 + on-cost)',
      't ÷ h × w × (1 + o)',
      [paid, HOUR, inputTerm(plan, 'crew.wage', 'w'), inputTerm(plan, 'crew.onCost', 'o')],
      ([t = 0, h = 1, w = 0, o = 0]) => (t / h) * w * (1 + o),
    ),
  );
}
