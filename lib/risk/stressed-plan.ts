import type { Quantity } from '../inputs/quantity.ts';
import type { Loan, Plan } from '../plan/plan-types.ts';
import { fromBase, toBase } from '../units/convert.ts';

/** What goes wrong, all at once; all 0 for a plan that goes as planned. */
export interface Stress {
  /** Share by which all prices fall [–], 0–1. */
  readonly revenueFall: number;
  /** Share by which all that is paid to run the shop rises [–], ≥ 0, standing costs included. */
  readonly costRise: number;
  /** Added to the interest of new loans [1/year]; debt that runs already keeps its rate. */
  readonly rateRise: number;
  /** Whole months by which new machines start later than they are paid for. */
  readonly monthsLate: number;
  /** Share of the sales of every product that is lost with a customer and not won back [–], 0–1. */
  readonly customerLost: number;
}

export const NO_STRESS: Stress = { revenueFall: 0, costRise: 0, rateRise: 0, monthsLate: 0, customerLost: 0 };

/**
 * The plan with prices, costs, interest and demand changed. Being late and the output that finds no buyer are no
 * values of the plan; `stressedFinance` sees to them.
 */
export function stressedPlan(plan: Plan, stress: Stress): Plan {
  return withCosts(withInterest(withSales(plan, stress), stress.rateRise), 1 + stress.costRise);
}

function scaled(quantity: Quantity, factor: number): Quantity {
  const { value, low, high, ...rest } = quantity;
  const bounds = {
    ...(low === undefined ? {} : { low: low * factor }),
    ...(high === undefined ? {} : { high: high * factor }),
  };
  return { ...rest, value: value * factor, ...bounds };
}

function withSales(plan: Plan, { revenueFall, customerLost }: Stress): Plan {
  const products = plan.products.map((product) => ({
    ...product,
    price: scaled(product.price, 1 - revenueFall),
    weeklyDemand: product.weeklyDemand && scaled(product.weeklyDemand, 1 - customerLost),
  }));
  return { ...plan, products };
}

function risenLoan(loan: Loan, rise: number): Loan {
  const { value, unit, origin } = loan.rate;
  const rate = Math.max(0, toBase(value, 'ratePerYear', unit) + rise);
  return { ...loan, rate: { value: fromBase(rate, 'ratePerYear', unit), unit, origin } };
}

function withInterest(plan: Plan, rise: number): Plan {
  if (rise === 0) return plan;
  const loans = plan.financing.loans.map((loan) => (loan.basis === 'running' ? loan : risenLoan(loan, rise)));
  return { ...plan, financing: { ...plan.financing, loans } };
}

/** Materials, wages, energy, upkeep and rent; not what machines and works cost to buy. */
function withCosts(plan: Plan, factor: number): Plan {
  const { site, crew } = plan;
  return {
    ...plan,
    site: {
      ...site,
      electricityPrice: scaled(site.electricityPrice, factor),
      demandCharge: scaled(site.demandCharge, factor),
      electricityFixed: scaled(site.electricityFixed, factor),
      priceBands: site.priceBands.map((band) => ({ ...band, price: scaled(band.price, factor) })),
      rentAndFixed: scaled(site.rentAndFixed, factor),
    },
    crew: { ...crew, wage: scaled(crew.wage, factor) },
    products: plan.products.map((product) => ({
      ...product,
      wetCost: scaled(product.wetCost, factor),
      packaging: scaled(product.packaging, factor),
      otherPerBatch: scaled(product.otherPerBatch, factor),
    })),
    chambers: plan.chambers.map((chamber) => ({ ...chamber, maintenance: scaled(chamber.maintenance, factor) })),
    pumps: plan.pumps.map((pump) => ({
      ...pump,
      oilPrice: scaled(pump.oilPrice, factor),
      filterCost: scaled(pump.filterCost, factor),
      rebuildCost: scaled(pump.rebuildCost, factor),
      repairBill: scaled(pump.repairBill, factor),
    })),
  };
}
