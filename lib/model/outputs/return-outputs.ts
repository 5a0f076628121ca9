import type { Payback, ScenarioResult, ScenarioReturn } from '../scenario-result.ts';
import {
  cashNeededWorking,
  discountedPaybackWorking,
  modifiedRateWorking,
  paybackWorking,
  presentValueWorking,
  profitabilityWorking,
  rateCountWorking,
  rateOfReturnWorking,
  yearlyWorthWorking,
} from '../workings/return-workings.ts';
import type { OutputField } from './output-field.ts';

function months(payback: Payback | undefined): number | null {
  return payback?.kind === 'crossed' ? payback.months : null;
}

/** A figure of the return against today; null for today itself. */
function returned(pick: (found: ScenarioReturn) => number | null): (result: ScenarioResult) => number | null {
  return ({ finance }) => finance.versusToday && pick(finance.versusToday);
}

/** What the change brings against staying as today. */
export const RETURN_OUTPUTS: readonly OutputField[] = [
  {
    id: 'payback',
    label: 'Payback',
    group: 'return',
    dimension: 'months',
    meaning: 'Months until the extra cash has paid back what was spent, against staying as today.',
    formula: 'first month, interpolated, in which cumulative after-tax cash against today is no longer negative',
    needs: ['capital', 'contribution'],
    read: returned((found) => months(found.payback)),
    working: paybackWorking,
  },
  {
    id: 'payback.discounted',
    label: 'Payback, discounted',
    group: 'return',
    dimension: 'months',
    meaning: 'The same with later money counted for less, at your discount rate.',
    formula: 'first month, interpolated, in which cumulative discounted cash against today is no longer negative',
    needs: ['payback'],
    read: returned((found) => months(found.discountedPayback)),
    working: discountedPaybackWorking,
  },
  {
    id: 'npv',
    label: 'Net present value',
    group: 'return',
    dimension: 'money',
    meaning: 'What the change is worth in today’s money over the horizon, at your discount rate.',
    formula: 'Σ (cash against today in month t, at the horizon with what is left) ÷ (1 + monthly rate)^t',
    needs: ['capital', 'contribution'],
    read: returned((found) => found.netPresentValue),
    working: presentValueWorking,
  },
  {
    id: 'npv.yearly',
    label: 'Worth a year',
    group: 'return',
    dimension: 'money',
    meaning: 'The net present value spread as one level amount over the years of the horizon; negative for a cost.',
    formula: 'net present value × rate ÷ (1 − (1 + rate)^−years)',
    needs: ['npv'],
    read: returned((found) => found.yearlyWorth),
    working: yearlyWorthWorking,
  },
  {
    id: 'irr',
    label: 'Internal rate of return',
    group: 'return',
    dimension: 'ratePerYear',
    meaning: 'Yearly interest the spent money earns; empty when there is none or more than one.',
    formula: 'the rate at which the net present value is zero',
    needs: ['npv'],
    read: returned(({ rateOfReturn }) => (rateOfReturn.kind === 'one' ? rateOfReturn.yearly : null)),
    working: rateOfReturnWorking,
  },
  {
    id: 'irr.count',
    label: 'Rates of return found',
    group: 'return',
    dimension: 'count',
    meaning: 'How many rates bring the present value to zero: none or several means that there is no rate of return.',
    formula: 'number of rates at which the net present value is zero',
    needs: ['irr'],
    read: returned(({ rateOfReturn: rate }) => {
      if (rate.kind === 'one') return 1;
      return rate.kind === 'several' ? rate.yearly.length : 0;
    }),
    working: rateCountWorking,
  },
  {
    id: 'mirr',
    label: 'Modified rate of return',
    group: 'return',
    dimension: 'ratePerYear',
    meaning: 'Yearly rate when money in is laid by and money out is borrowed at rates of their own; there is only one.',
    formula: '(end value of receipts ÷ present value of payments)^(1 ÷ years) − 1',
    needs: ['npv'],
    read: returned((found) => found.modifiedRate),
    working: modifiedRateWorking,
  },
  {
    id: 'profitability',
    label: 'Profitability index',
    group: 'return',
    dimension: 'count',
    meaning: 'What each unit of money spent is worth in today’s money; above 1 it is worth spending.',
    formula: '1 + net present value ÷ present value of what is bought',
    needs: ['npv', 'capital'],
    read: returned((found) => found.profitabilityIndex),
    working: profitabilityWorking,
  },
  {
    id: 'cashNeeded',
    label: 'Own cash needed',
    group: 'return',
    dimension: 'money',
    meaning: 'The most of your own money that is out at once before it has paid back, loans counted.',
    formula: 'depth of cumulative cash against today after loans and tax, until it first returns to zero',
    needs: ['capital'],
    read: returned((found) => 0 - found.cashNeeded.amount),
    working: cashNeededWorking,
  },
];
