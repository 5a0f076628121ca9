import type { BasisPhase, BasisWeek } from '../../model/lender-basis-types.ts';
import { fromBase } from '../../units/convert.ts';
import { type Expression, largest, minus, over, plus, reference, times } from './expression.ts';
import { nameOf, pathOf } from './plan-paths.ts';
import { SheetDraft } from './sheet-draft.ts';
import { inMass, type WorkbookContext } from './workbook-context.ts';
import type { CellFormat, WorkbookSheet } from './workbook-types.ts';

/** One product of one simulated week. */
export interface WeekProduct {
  readonly dryOut: Expression;
  /** Running cost of the week [money/week]. */
  readonly cost: Expression;
}

/** A simulated week with prices put to it. */
export interface PricedWeek {
  readonly products: ReadonlyMap<string, WeekProduct>;
  /** Cost that runs on whatever is made [money/month]. */
  readonly standing: Expression;
}

/** Failing pumps of a way to run the shop. */
export interface PricedFailures {
  readonly availability: Expression;
  /** Spoiled loads and repairs [money/month]. */
  readonly cost: Expression;
}

const ZERO = reference('0', 0);

function sum(terms: readonly Expression[]): Expression {
  return terms.length === 0 ? ZERO : plus(...terms);
}

/** Counts of one week as they are written down. */
interface CountedWeek {
  readonly products: ReadonlyMap<
    string,
    Readonly<Record<'batches' | 'wetIn' | 'dryOut' | 'chamberTime' | 'handsOn', Expression>>
  >;
  readonly energy: readonly Expression[];
  readonly peakPower: Expression;
  readonly paidTime: Expression;
  readonly pumps: readonly { readonly path: string; readonly oilChanges: Expression; readonly rebuilds: Expression }[];
  readonly chambers: readonly { readonly path: string; readonly count: Expression }[];
}

/** The sheet of simulated weeks: what was counted, and what it costs at the prices of the assumptions. */
export class WeekSheet {
  readonly draft = new SheetDraft('Weeks');
  readonly weeks: readonly PricedWeek[];
  readonly #context: WorkbookContext;

  constructor(context: WorkbookContext) {
    this.#context = context;
    this.draft.text(this.draft.takeRow(), 0, 'Simulated weeks', 'title');
    const words =
      'Counts in green come from the simulation of the shop and hold for the machines, shifts and products of the plan; costs follow from them.';
    this.draft.text(this.draft.takeRow(), 0, words, 'note');
    this.weeks = context.basis.weeks.map((week) => this.#week(week));
  }

  /** Failing pumps of one way to run the shop. @param label what the way is called */
  failures(phase: BasisPhase, label: string): PricedFailures {
    this.#heading(`Failing pumps: ${label}`);
    const { assumptions } = this.#context;
    const availability = this.#count('Chambers have a running pump', '', phase.availability, 'share');
    const failures = this.#count('Failures', 'a year', phase.failuresPerYear);
    const pump = pathOf(this.#context.plan, 'pumps', phase.pumpId);
    const spoiled = phase.spoiled.map(({ productId, perYear }) => {
      const product = pathOf(this.#context.plan, 'products', productId);
      const name = nameOf(this.#context.plan, 'products', productId);
      const lost = this.#count(`Spoiled: ${name}`, `${this.#context.mass} a year`, inMass(this.#context, perYear));
      // What would be packed at a loss is not packed, and nobody misses it.
      const worth = largest(0, minus(assumptions.at(`${product}.price`), assumptions.at(`${product}.packaging`)));
      return times(lost, assumptions.at(`${product}.saleableYield`), worth);
    });
    const year = plus(...spoiled, times(failures, assumptions.at(`${pump}.repairBill`)));
    return { availability, cost: this.#worked('Spoiled loads and repairs', 'a month', over(year, 12), 'cents') };
  }

  finish(): WorkbookSheet {
    return this.draft.finish([44, 18, 16], { rows: 2, columns: 0 });
  }

  #heading(text: string): void {
    this.draft.text(this.draft.takeRow(1), 0, text, 'heading');
  }

  #count(label: string, unit: string, value: number, format: CellFormat = 'figure'): Expression {
    const row = this.#label(label, unit);
    return this.draft.number(row, 2, value, 'counted', format);
  }

  #worked(label: string, unit: string, expression: Expression, format: CellFormat = 'figure'): Expression {
    return this.draft.formula(this.#label(label, unit), 2, expression, format);
  }

  #label(label: string, unit: string): number {
    const row = this.draft.takeRow();
    this.draft.text(row, 0, label);
    this.draft.text(row, 1, unit, 'note');
    return row;
  }

  #week(week: BasisWeek): PricedWeek {
    this.#heading(week.isLarger ? `${week.name}, for the market of its busiest month` : week.name);
    const counted = this.#counts(week);
    const energy = this.#worked(
      'Energy',
      'a week',
      sum(counted.energy.map((kwh, k) => times(kwh, this.#energyPrice(k)))),
      'cents',
    );
    const upkeep = this.#worked('Oil and vacuum upkeep', 'a week', this.#upkeep(counted), 'cents');
    const wages = this.#worked('Wages with on-costs', 'a week', times(counted.paidTime, this.#loadedWage()), 'cents');
    const shared = { energy, upkeep, wages: this.#isGuaranteed() ? ZERO : wages };
    return {
      products: new Map([...counted.products.keys()].map((id) => [id, this.#product(counted, id, shared)])),
      standing: this.#standing(counted, wages),
    };
  }

  #counts(week: BasisWeek): CountedWeek {
    const { plan } = this.#context;
    return {
      products: new Map(week.products.map((product) => [product.productId, this.#productCounts(product)])),
      energy: week.energy.map((kwh, k) => this.#count(`Energy, ${this.#bandName(k)}`, 'kWh a week', kwh)),
      peakPower: this.#count('Highest quarter hour', 'kW', week.peakPower / 1000),
      paidTime: this.#count('Hired hours that are paid', 'h a week', fromBase(week.paidTime, 'time', 'h')),
      pumps: week.pumps.map(({ pumpId, oilChanges, rebuilds }) => ({
        path: pathOf(plan, 'pumps', pumpId),
        oilChanges: this.#count(`Oil changes: ${nameOf(plan, 'pumps', pumpId)}`, 'a week', oilChanges),
        rebuilds: this.#count(`Rebuilds: ${nameOf(plan, 'pumps', pumpId)}`, 'a week', rebuilds),
      })),
      chambers: week.chambers.map(({ chamberId, count }) => ({
        path: pathOf(plan, 'chambers', chamberId),
        count: this.#count(`Chambers: ${nameOf(plan, 'chambers', chamberId)}`, '', count, 'count'),
      })),
    };
  }

  #productCounts(product: BasisWeek['products'][number]) {
    const { plan, mass } = this.#context;
    const name = nameOf(plan, 'products', product.productId);
    return {
      batches: this.#count(`${name}: batches`, 'a week', product.batches),
      wetIn: this.#count(`${name}: wet food loaded`, `${mass} a week`, inMass(this.#context, product.wetIn)),
      dryOut: this.#count(`${name}: dried`, `${mass} a week`, inMass(this.#context, product.dryOut)),
      chamberTime: this.#count(`${name}: chamber hours`, 'h a week', fromBase(product.chamberTime, 'time', 'h')),
      handsOn: this.#count(`${name}: hands-on hours`, 'h a week', fromBase(product.handsOn, 'time', 'h')),
    };
  }

  #bandName(k: number): string {
    return k === 0 ? 'basic price' : (this.#context.plan.site.priceBands[k - 1]?.name ?? '');
  }

  #energyPrice(k: number): Expression {
    const path = k === 0 ? 'site.electricityPrice' : `site.priceBands.${k - 1}.price`;
    return this.#context.assumptions.at(path);
  }

  #isGuaranteed(): boolean {
    return this.#context.plan.crew.guaranteed;
  }

  #loadedWage(): Expression {
    const { assumptions } = this.#context;
    return times(assumptions.at('crew.wage'), plus(1, assumptions.at('crew.onCost')));
  }

  #upkeep({ pumps }: CountedWeek): Expression {
    const at = (path: string) => this.#context.assumptions.at(path);
    const terms = pumps.map(({ path, oilChanges, rebuilds }) => {
      const change = plus(times(at(`${path}.oilVolume`), at(`${path}.oilPrice`)), at(`${path}.filterCost`));
      return plus(times(oilChanges, change), times(rebuilds, at(`${path}.rebuildCost`)));
    });
    return sum(terms);
  }

  /** A product's part of a cost that is shared out. */
  #part(counted: CountedWeek, id: string, by: 'chamberTime' | 'handsOn', pool: Expression): Expression {
    const all = [...counted.products.values()].map((product) => product[by]);
    const own = counted.products.get(id)?.[by] ?? ZERO;
    const whole = sum(all);
    return whole.value > 0 ? times(pool, over(own, whole)) : ZERO;
  }

  #product(
    counted: CountedWeek,
    id: string,
    shared: { readonly energy: Expression; readonly upkeep: Expression; readonly wages: Expression },
  ): WeekProduct {
    const { plan, assumptions } = this.#context;
    const at = (key: string) => assumptions.at(`${pathOf(plan, 'products', id)}.${key}`);
    const own = counted.products.get(id);
    if (!own) throw new RangeError(`the week does not make ${id}`);
    const materials = plus(
      times(over(own.wetIn, minus(1, at('trimLoss'))), at('wetCost')),
      times(own.dryOut, at('saleableYield'), at('packaging')),
      times(own.batches, at('otherPerBatch')),
    );
    const rest = plus(
      this.#part(counted, id, 'chamberTime', shared.energy),
      this.#part(counted, id, 'chamberTime', shared.upkeep),
      this.#part(counted, id, 'handsOn', shared.wages),
    );
    const label = `${nameOf(plan, 'products', id)}: running cost`;
    return { dryOut: own.dryOut, cost: this.#worked(label, 'a week', plus(materials, rest), 'cents') };
  }

  #standing(counted: CountedWeek, wages: Expression): Expression {
    const { assumptions, constants } = this.#context;
    const maintenance = counted.chambers.map(({ path, count }) => times(count, assumptions.at(`${path}.maintenance`)));
    const guaranteed = this.#isGuaranteed() ? [times(wages, constants.weeksPerMonth)] : [];
    const month = plus(
      times(counted.peakPower, assumptions.at('site.demandCharge')),
      assumptions.at('site.electricityFixed'),
      assumptions.at('site.rentAndFixed'),
      ...maintenance,
      ...guaranteed,
    );
    return this.#worked('Standing cost', 'a month', month, 'cents');
  }
}
