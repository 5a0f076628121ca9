import type { BasisStage } from '../../model/lender-basis-types.ts';
import {
  type CellRange,
  type Expression,
  largest,
  minus,
  plus,
  reference,
  smallest,
  sumOf,
  times,
} from './expression.ts';
import { pathOf } from './plan-paths.ts';
import { SheetDraft } from './sheet-draft.ts';
import type { WorkbookContext } from './workbook-context.ts';
import type { WorkbookSheet } from './workbook-types.ts';

/** Price of one thing and what it takes to put it in. */
export interface UnitCost {
  readonly price: Expression;
  readonly installation: Expression;
  /** What one fetches at the end of its life. */
  readonly salvage: Expression;
}

/** One purchase with prices put to it. */
export interface PricedStage {
  readonly month: number;
  /** Delivery and contingency. */
  readonly extras: Expression;
  /** Received for old equipment, positive. */
  readonly given: Expression;
  /** All that is paid, less what is received for old equipment. */
  readonly capital: Expression;
}

const ZERO = reference('0', 0);

const HEADS = ['What', 'Pieces', 'Price', 'Installation', 'Amount'];

/** Prices of a kind of thing. Throws RangeError on a kind that is not in the plan. */
export function unitCost({ plan, assumptions }: WorkbookContext, key: string, stage: BasisStage | undefined): UnitCost {
  const [kind = '', id = ''] = key.split(' ');
  const plain = (path: string): UnitCost => ({ price: assumptions.at(path), installation: ZERO, salvage: ZERO });
  const withSalvage = (path: string, installation: Expression): UnitCost => {
    const price = assumptions.at(`${path}.price`);
    return { price, installation, salvage: times(assumptions.at(`${path}.salvage`), price) };
  };
  switch (kind) {
    case 'chamber': {
      const path = pathOf(plan, 'chambers', id);
      return withSalvage(path, assumptions.at(`${path}.installation`));
    }
    case 'pump':
      return withSalvage(pathOf(plan, 'pumps', id), ZERO);
    case 'freezer':
      return withSalvage('freezer', ZERO);
    case 'hose':
      return plain(`${pathOf(plan, 'hoses', id)}.price`);
    case 'manifold':
      return plain('site.manifoldPerChamber');
    case 'electrical':
      return plain('site.electricalPerChamber');
    case 'other':
      return plain(`${pathOf(plan, 'scenarios', stage?.scenarioId ?? '')}.extraCapital`);
    default:
      throw new RangeError(`no kind of thing called ${key}`);
  }
}

/** The sheet of purchases: what is bought when, at the prices of the assumptions. */
export class PurchaseSheet {
  readonly draft = new SheetDraft('Purchases');
  readonly stages: readonly PricedStage[];
  readonly #context: WorkbookContext;
  #monthCells: CellRange = { text: '', values: [] };
  #capitalCells: CellRange = { text: '', values: [] };

  constructor(context: WorkbookContext) {
    this.#context = context;
    this.draft.text(this.draft.takeRow(), 0, 'Purchases', 'title');
    this.draft.text(
      this.draft.takeRow(),
      0,
      'What is bought, and in which month, is as in the plan; prices follow.',
      'note',
    );
    this.stages = context.basis.stages.map((stage) => this.#stage(stage));
    if (this.stages.length > 0) this.#summary();
  }

  /** Months of the purchases, 1 for the first, and their capital in the same order. */
  get months(): CellRange {
    return this.#monthCells;
  }

  get capitals(): CellRange {
    return this.#capitalCells;
  }

  finish(): WorkbookSheet {
    return this.draft.finish([44, 12, 14, 14, 16], { rows: 2, columns: 0 });
  }

  #stage(stage: BasisStage): PricedStage {
    this.draft.text(
      this.draft.takeRow(1),
      0,
      `${stage.name}, bought at the start of month ${stage.month + 1}`,
      'heading',
    );
    const head = this.draft.takeRow();
    HEADS.forEach((words, column) => {
      this.draft.text(head, column, words, column === 0 ? 'head' : 'figureHead');
    });
    const first = head + 1;
    const items = stage.items.map((item) => this.#item(stage, item));
    const things = sumOf(this.draft.range([first, 4], [Math.max(first, first + items.length - 1), 4], items));
    return this.#extras(stage, items.length > 0 ? things : ZERO);
  }

  #item(stage: BasisStage, { key, name, count }: BasisStage['items'][number]): number {
    const row = this.draft.takeRow();
    const cost = unitCost(this.#context, key, stage);
    this.draft.text(row, 0, name);
    const pieces = this.draft.number(row, 1, count, 'label', 'count');
    const price = this.draft.formula(row, 2, cost.price, 'cents');
    const installation = this.draft.formula(row, 3, cost.installation, 'cents');
    return this.draft.formula(row, 4, times(pieces, plus(price, installation)), 'cents').value;
  }

  #line(label: string, amount: Expression, look: 'worked' | 'total' = 'worked'): Expression {
    const row = this.draft.takeRow();
    this.draft.text(row, 0, label, look === 'total' ? 'total' : 'label');
    return this.draft.formula(row, 4, amount, 'cents', look);
  }

  #extras(stage: BasisStage, things: Expression): PricedStage {
    const { plan, assumptions } = this.#context;
    const sum = this.#line('All things and works', things);
    const delivery = this.#line('Delivery', stage.items.length > 0 ? assumptions.at('site.delivery') : ZERO);
    const contingency = this.#line('Contingency', times(assumptions.at('site.contingency'), plus(sum, delivery)));
    const extra = assumptions.at(`${pathOf(plan, 'scenarios', stage.scenarioId)}.extraCapital`);
    const given = this.#line('Received for old equipment', largest(0, minus(0, smallest(0, extra))));
    const capital = this.#line('To be paid', minus(plus(sum, delivery, contingency), given), 'total');
    return { month: stage.month, extras: plus(delivery, contingency), given, capital };
  }

  #summary(): void {
    this.draft.text(this.draft.takeRow(1), 0, 'By month', 'heading');
    const head = this.draft.takeRow();
    this.draft.text(head, 1, 'Month', 'figureHead');
    this.draft.text(head, 4, 'To be paid', 'figureHead');
    for (const [k, stage] of this.stages.entries()) {
      const row = this.draft.takeRow();
      this.draft.text(row, 0, this.#context.basis.stages[k]?.name ?? '');
      this.draft.number(row, 1, stage.month + 1, 'label', 'count');
      this.draft.formula(row, 4, stage.capital, 'cents');
    }
    const last = head + this.stages.length;
    const values = (pick: (stage: PricedStage) => number) => this.stages.map(pick);
    this.#monthCells = this.draft.range(
      [head + 1, 1],
      [last, 1],
      values((stage) => stage.month + 1),
    );
    this.#capitalCells = this.draft.range(
      [head + 1, 4],
      [last, 4],
      values((stage) => stage.capital.value),
    );
  }
}
