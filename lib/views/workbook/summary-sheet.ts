import type { ScenarioResult, ScenarioReturn } from '../../model/scenario-result.ts';
import { CAUTIONS } from '../cautions.ts';
import type { Expression } from './expression.ts';
import type { ReturnCells } from './return-sheet.ts';
import { SheetDraft } from './sheet-draft.ts';
import type { Statements } from './statement-sheet.ts';
import type { WorkbookContext } from './workbook-context.ts';
import type { CellFormat, CellLook, WorkbookSheet } from './workbook-types.ts';

interface KeyFigure {
  readonly label: string;
  readonly unit: string;
  readonly format: CellFormat;
  readonly live: Expression;
  /** As the planner worked it out; null for none. */
  readonly delivered: number | null;
}

const LOOKS: readonly (readonly [CellLook, string])[] = [
  ['input', 'an assumption, measured or quoted: may be changed'],
  ['handbook', 'an assumption from a handbook: may be changed'],
  ['guess', 'a guess: replace it first'],
  ['counted', 'counted by the simulation of the shop: holds for the machines, shifts and products of the plan'],
  ['worked', 'a formula'],
  ['check', 'must be nothing'],
];

/** Last column of the sheet. */
const LAST = 3;

function months(payback: ScenarioReturn['payback']): number | null {
  return payback.kind === 'crossed' ? payback.months : null;
}

function returnFigures(cells: ReturnCells, found: ScenarioReturn, money: string): KeyFigure[] {
  const { rateOfReturn: rate } = found;
  return [
    { label: 'Payback', unit: 'months', format: 'ratio', live: cells.payback, delivered: months(found.payback) },
    {
      label: 'Payback, discounted',
      unit: 'months',
      format: 'ratio',
      live: cells.discountedPayback,
      delivered: months(found.discountedPayback),
    },
    {
      label: 'Net present value',
      unit: money,
      format: 'cents',
      live: cells.netPresentValue,
      delivered: found.netPresentValue,
    },
    {
      label: 'Internal rate of return',
      unit: 'a year',
      format: 'share',
      live: cells.rateOfReturn,
      delivered: rate.kind === 'one' ? rate.yearly : null,
    },
    {
      label: 'Modified rate of return',
      unit: 'a year',
      format: 'share',
      live: cells.modifiedRate,
      delivered: found.modifiedRate,
    },
    {
      label: 'Profitability index',
      unit: '',
      format: 'ratio',
      live: cells.profitabilityIndex,
      delivered: found.profitabilityIndex,
    },
    {
      label: 'Net present value of own money',
      unit: money,
      format: 'cents',
      live: cells.ownNetPresentValue,
      delivered: found.financed.netPresentValue,
    },
  ];
}

function lenderFigures(
  plan: Statements,
  { finance }: ScenarioResult,
  lowestCash: Expression,
  money: string,
): KeyFigure[] {
  return [
    {
      label: 'Lowest debt cover of twelve months',
      unit: '',
      format: 'ratio',
      live: plan.lowestCover,
      delivered: finance.lowestCover,
    },
    {
      label: "The same with the owner's hours paid",
      unit: '',
      format: 'ratio',
      live: plan.lowestCoverOwnerPaid,
      delivered: finance.lowestCoverOwnerPaid,
    },
    { label: 'Least cash in the bank', unit: money, format: 'cents', live: lowestCash, delivered: finance.lowestCash },
  ];
}

function putFigures(draft: SheetDraft, figures: readonly KeyFigure[]): void {
  const head = draft.takeRow(1);
  ['Key figures', 'With the values in this file', 'Unit', 'As delivered'].forEach((words, column) => {
    draft.text(head, column, words, column % 2 === 1 ? 'figureHead' : 'head');
  });
  for (const { label, unit, format, live, delivered } of figures) {
    const row = draft.takeRow();
    draft.text(row, 0, label);
    draft.formula(row, 1, live, format, 'worked');
    draft.text(row, 2, unit, 'note');
    if (delivered === null) draft.text(row, 3, '—', 'note');
    else draft.number(row, 3, delivered, 'label', format);
  }
}

function putWords(draft: SheetDraft, heading: string, lines: readonly (readonly [string, string])[]): void {
  draft.text(draft.takeRow(1), 0, heading, 'heading');
  for (const [what, words] of lines) {
    const row = draft.takeRow();
    draft.text(row, 0, what);
    draft.wideText(row, 1, LAST, words);
  }
}

/** The first sheet: what the workbook is, its key figures and how to read it. */
export function summarySheet(
  context: WorkbookContext,
  result: ScenarioResult,
  plan: Statements,
  cells: ReturnCells | null,
  verdict: Expression,
  lowestCash: Expression,
): WorkbookSheet {
  const { site } = context.plan;
  const draft = new SheetDraft('Summary');
  draft.text(draft.takeRow(), 0, `${site.shopName}: ${result.name}`, 'title');
  const words =
    'Projections follow by formulas from the sheets of assumptions and of seasons. Money out is negative. All money is in';
  draft.wideText(draft.takeRow(), 0, LAST, `${words} ${site.currency}.`);
  const found = result.finance.versusToday;
  const returns = cells && found ? returnFigures(cells, found, context.money) : [];
  putFigures(draft, [...returns, ...lenderFigures(plan, result, lowestCash, context.money)]);
  const row = draft.takeRow();
  draft.text(row, 0, 'Checks');
  draft.formula(row, 1, verdict, 'text', 'check');
  draft.text(draft.takeRow(1), 0, 'Colours', 'heading');
  for (const [look, meaning] of LOOKS) {
    const line = draft.takeRow();
    draft.text(line, 0, look === 'check' ? '0.00' : 'value', look);
    draft.wideText(line, 1, LAST, meaning);
  }
  putWords(draft, 'What changes with what', [
    [
      'Money',
      'Prices, costs, wages, interest, tax, days and loan terms are live: change them on the sheet of assumptions.',
    ],
    [
      'Machines',
      'Numbers of machines, months of purchase, products and shifts are those of the plan: change them there, where the week is simulated anew.',
    ],
    ['Market', 'Demand, growth and seasons are live as limits of what is sold; the simulated week stays as it is.'],
  ]);
  putWords(
    draft,
    'Before you rely on this',
    CAUTIONS.map(({ about, words: caution }) => [about, caution] as const),
  );
  return draft.finish([40, 30, 14, 26], { rows: 1, columns: 0 });
}
