import type { BasisPath, BasisPhase } from '../../model/lender-basis-types.ts';
import { findById } from '../../plan/find-by-id.ts';
import {
  type CellRange,
  type Expression,
  either,
  entryOf,
  isBelow,
  largest,
  minus,
  over,
  plus,
  power,
  reference,
  smallest,
  sumOf,
  times,
} from './expression.ts';
import { type MonthRow, MonthSheet } from './month-sheet.ts';
import { nameOf, pathOf } from './plan-paths.ts';
import type { PricedFailures, WeekSheet } from './week-sheet.ts';
import { blend, inMass, productsOf, type WorkbookContext } from './workbook-context.ts';

/** Sales and costs by month, all positive. */
export interface SalesRows {
  readonly sheet: MonthSheet;
  readonly revenue: MonthRow;
  readonly variableCosts: MonthRow;
  readonly fixedCosts: MonthRow;
  readonly stockValue: MonthRow;
}

interface ProductRows {
  readonly revenue: MonthRow;
  readonly costs: MonthRow;
  readonly stockValue: MonthRow;
}

const ZERO = reference('0', 0);

/** What is made and sold one way, product by product and month by month. */
class SalesSheet {
  readonly sheet: MonthSheet;
  readonly #context: WorkbookContext;
  readonly #path: BasisPath;
  readonly #weeks: WeekSheet;
  readonly #failures: readonly PricedFailures[];
  readonly #open: MonthRow;
  readonly #shares: MonthRow;

  constructor(
    context: WorkbookContext,
    path: BasisPath,
    weeks: WeekSheet,
    failures: readonly PricedFailures[],
    name: string,
  ) {
    const { basis } = context;
    this.#context = context;
    this.#path = path;
    this.#weeks = weeks;
    this.#failures = failures;
    this.sheet = new MonthSheet(
      `${name} sales`,
      `${name}: what is made and sold`,
      basis.horizonMonths,
      basis.startMonth,
    );
    this.#open = this.sheet.row('Weeks of full running', 'weeks', 'figure');
    this.#open.fill(this.sheet.horizon, (month) => this.#runningWeeks(month));
    this.#shares = this.sheet.row('Run as for the larger market', '', 'share');
    for (let month = 0; month < this.sheet.horizon; month += 1) {
      this.#shares.count(month, this.#phaseIn(month).largerShares[month] ?? 0);
    }
  }

  rows(): SalesRows {
    const products = productsOf(this.#path).map((id) => this.#product(id));
    this.sheet.heading('All products');
    const total = (label: string, key: keyof ProductRows) =>
      this.sheet
        .row(label, this.#context.money, 'cents', 'total')
        .fill(this.sheet.horizon, (month) =>
          products.length === 0 ? ZERO : plus(...products.map((rows) => rows[key].at(month))),
        );
    return {
      sheet: this.sheet,
      revenue: total('Sales', 'revenue'),
      variableCosts: total('Running cost of what leaves', 'costs'),
      stockValue: total('Cost of what lies in store', 'stockValue'),
      fixedCosts: this.sheet
        .row('Standing cost and failing pumps', this.#context.money, 'cents', 'total')
        .fill(this.sheet.horizon, (month) => this.#standing(month)),
    };
  }

  #place(month: number): number {
    return this.#path.phases.findLastIndex((phase) => phase.month <= month);
  }

  #phaseIn(month: number): BasisPhase {
    const phase = this.#path.phases[this.#place(month)];
    if (!phase) throw new RangeError(`no way of running the shop in month ${month}`);
    return phase;
  }

  #runningWeeks(month: number): Expression {
    const { assumptions, constants } = this.#context;
    const closed = over(assumptions.at('site.closedWeeks'), 12);
    const pumps = this.#failures[this.#place(month)]?.availability ?? ZERO;
    return times(largest(0, minus(constants.weeksPerMonth, closed)), assumptions.at('site.availability'), pumps);
  }

  /** A figure of the week that runs in a month, the larger market's mixed in. */
  #blended(month: number, figure: (week: number) => Expression): Expression {
    const { week, larger } = this.#phaseIn(month);
    return larger === null ? figure(week) : blend(this.#shares.at(month), figure(week), figure(larger));
  }

  #standing(month: number): Expression {
    const standing = this.#blended(month, (week) => this.#weeks.weeks[week]?.standing ?? ZERO);
    return plus(standing, this.#failures[this.#place(month)]?.cost ?? ZERO);
  }

  #costPerDry(month: number, id: string): Expression {
    const of = (key: 'cost' | 'dryOut') =>
      this.#blended(month, (week) => this.#weeks.weeks[week]?.products.get(id)?.[key] ?? ZERO);
    const dry = of('dryOut');
    return dry.value > 0 ? over(of('cost'), dry) : ZERO;
  }

  #product(id: string): ProductRows {
    const { plan, assumptions, money, mass } = this.#context;
    const { sheet } = this;
    const product = pathOf(plan, 'products', id);
    sheet.heading(nameOf(plan, 'products', id));
    const capacity = sheet.row('Dried in a running week', `${mass} a week`, 'figure');
    const perWeek = this.#path.capacity.find((made) => made.productId === id)?.perWeek ?? [];
    perWeek.forEach((kilograms, month) => {
      capacity.count(month, inMass(this.#context, kilograms));
    });
    const can = sheet
      .row('Could be made, fit for sale', mass, 'figure')
      .fill(sheet.horizon, (month) =>
        times(capacity.at(month), this.#open.at(month), assumptions.at(`${product}.saleableYield`)),
      );
    const demand = this.#demand(id, product);
    const volumes = this.#volumes(id, product, can, demand);
    const unit = sheet
      .row('Running cost of a dried weight', `${money} a ${mass}`, 'figure')
      .fill(sheet.horizon, (month) => this.#costPerDry(month, id));
    const spent = sheet
      .row('Spent on what is made', money)
      .fill(sheet.horizon, (month) =>
        times(over(volumes.made.at(month), assumptions.at(`${product}.saleableYield`)), unit.at(month)),
      );
    const costs = this.#costs(volumes, spent);
    const revenue = sheet
      .row('Sales', money)
      .fill(sheet.horizon, (month) => times(volumes.sold.at(month), assumptions.at(`${product}.price`)));
    return { revenue, ...costs };
  }

  #demand(id: string, product: string): MonthRow | null {
    const { assumptions, constants, seasons, mass } = this.#context;
    if (!assumptions.has(`${product}.weeklyDemand`)) return null;
    const { sheet } = this;
    const season = seasons.get(id);
    return sheet.row('The market takes', mass, 'figure').fill(sheet.horizon, (month) => {
      const years = over(minus(sheet.month.at(month), 1), 12);
      const grown = times(
        assumptions.at(`${product}.weeklyDemand`),
        constants.weeksPerMonth,
        power(plus(1, assumptions.at(`${product}.growth`)), years),
      );
      return season ? this.#inSeason(grown, season, month) : grown;
    });
  }

  #inSeason(grown: Expression, season: CellRange, month: number): Expression {
    const weight = over(times(12, entryOf(season, this.sheet.calendar.at(month))), sumOf(season));
    return either(isBelow(0, sumOf(season)), times(grown, weight), grown);
  }

  #volumes(id: string, product: string, can: MonthRow, demand: MonthRow | null) {
    const { plan, mass } = this.#context;
    const { horizon } = this.sheet;
    const { unsold } = findById(plan.products, id, 'product');
    const taken = (month: number) => (demand ? smallest(can.at(month), demand.at(month)) : can.at(month));
    const made = this.sheet.row('Made', mass, 'figure');
    const sold = this.sheet.row('Sold', mass, 'figure');
    if (unsold === 'keep') return this.#kept(product, can, demand, made, sold);
    made.fill(horizon, (month) => (unsold === 'discard' ? can.at(month) : taken(month)));
    sold.fill(horizon, taken);
    return { made, sold, stock: null };
  }

  #kept(product: string, can: MonthRow, demand: MonthRow | null, made: MonthRow, sold: MonthRow) {
    const stock = this.sheet.row('In store', this.#context.mass, 'figure');
    const most = this.#context.assumptions.at(`${product}.mostKept`);
    stock.count(-1, 0);
    for (let month = 0; month < this.sheet.horizon; month += 1) {
      const before = stock.at(month - 1);
      const room = demand ? largest(0, minus(plus(demand.at(month), most), before)) : null;
      made.set(month, room ? smallest(can.at(month), room) : can.at(month));
      const all = plus(before, made.at(month));
      sold.set(month, demand ? smallest(all, demand.at(month)) : all);
      stock.set(month, minus(all, sold.at(month)));
    }
    return { made, sold, stock };
  }

  /** Costs by the month in which the goods leave, and what those in store have cost, by average cost. */
  #costs(volumes: { readonly made: MonthRow; readonly stock: MonthRow | null }, spent: MonthRow) {
    const { money } = this.#context;
    const { made, stock } = volumes;
    const costs = this.sheet.row('Running cost of what leaves', money);
    const stockValue = this.sheet.row('Cost of what lies in store', money);
    stockValue.count(-1, 0);
    for (let month = 0; month < this.sheet.horizon; month += 1) {
      const all = plus(stockValue.at(month - 1), spent.at(month));
      stockValue.set(month, stock ? this.#left(all, stock, made, month) : ZERO);
      costs.set(month, minus(all, stockValue.at(month)));
    }
    return { costs, stockValue };
  }

  #left(all: Expression, stock: MonthRow, made: MonthRow, month: number): Expression {
    const goods = plus(stock.at(month - 1), made.at(month));
    return either(isBelow(0, goods), times(all, smallest(1, over(stock.at(month), goods))), 0);
  }
}

/** Sales and costs of the shop run one way. @param name of the way, which heads its sheets */
export function salesRows(
  context: WorkbookContext,
  path: BasisPath,
  weeks: WeekSheet,
  failures: readonly PricedFailures[],
  name: string,
): SalesRows {
  return new SalesSheet(context, path, weeks, failures, name).rows();
}
