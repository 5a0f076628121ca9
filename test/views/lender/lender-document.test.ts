import { describe, expect, it } from 'vitest';
import { evaluateScenario, todayWeek } from '../../../lib/model/evaluate-scenario.ts';
import { OUTPUTS } from '../../../lib/model/outputs.ts';
import type { ScenarioResult } from '../../../lib/model/scenario-result.ts';
import { findById } from '../../../lib/plan/find-by-id.ts';
import type { Plan } from '../../../lib/plan/plan-types.ts';
import { scenarioRisk } from '../../../lib/risk/scenario-risk.ts';
import { formatPercent } from '../../../lib/views/format-number.ts';
import { quantityWithUnit } from '../../../lib/views/format-quantity.ts';
import type {
  DocumentBlock,
  DocumentTable,
  LenderDocument,
  LenderSources,
} from '../../../lib/views/lender/document-types.ts';
import { lenderDocument } from '../../../lib/views/lender/lender-document.ts';
import { planWith } from '../../model/edited-plan.ts';
import { fakeSimulation } from '../../model/fake-plant.ts';
import { SAMPLE_BOTTLENECK } from '../sample-result.ts';

const simulate = fakeSimulation();

function resultOf(plan: Plan, id: string): ScenarioResult {
  const outcome = evaluateScenario(plan, id, todayWeek(plan, simulate), simulate);
  if (outcome.kind !== 'computed') throw new Error(JSON.stringify(outcome.findings));
  return outcome.result;
}

function sourcesOf(plan: Plan, id: string): LenderSources {
  const result = resultOf(plan, id);
  const risk = scenarioRisk(plan, result, simulate);
  if (!risk) throw new Error('no risk');
  return {
    plan,
    scenario: findById(plan.scenarios, id, 'scenario'),
    result,
    today: resultOf(plan, plan.scenarios[0]?.id ?? ''),
    bottleneck: SAMPLE_BOTTLENECK,
    todayBottleneck: null,
    risk,
    shown: { system: 'us', currency: 'USD' },
    date: '2026-01-01',
  };
}

function tablesOf(papers: LenderDocument, section: string): readonly DocumentTable[] {
  const found = papers.sections.find(({ id }) => id === section);
  return found?.blocks.flatMap((block) => (block.kind === 'table' ? [block.table] : [])) ?? [];
}

function tableOf(papers: LenderDocument, section: string, caption: string): DocumentTable {
  const table = tablesOf(papers, section).find((candidate) => candidate.caption.startsWith(caption));
  if (!table) throw new Error(`no table "${caption}" in ${section}`);
  return table;
}

function rowOf(table: DocumentTable, label: string): readonly string[] {
  const row = table.rows.find(({ cells }) => cells[0] === label);
  if (!row) throw new Error(`no row "${label}" in "${table.caption}"`);
  return row.cells.slice(1);
}

/** Whole cents, or whole money, of a text. */
function read(text: string): number {
  return text === '–' ? 0 : Number(text.replace('−', '-').replaceAll(',', ''));
}

const cents = (text: string) => Math.round(read(text) * 100);
const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);

function textsOf(block: DocumentBlock): readonly string[] {
  switch (block.kind) {
    case 'words':
    case 'heading':
      return [block.text];
    case 'facts':
      return block.facts.flatMap(({ label, value, note }) => [label, value, note ?? '']);
    case 'list':
      return block.items.flatMap(({ about, words }) => [about, words]);
    case 'table':
      return [block.table.caption, ...block.table.head, ...block.table.rows.flatMap(({ cells }) => cells)];
    case 'figure':
      return [];
  }
}

const PLAN = planWith(() => {});
const SOURCES = sourcesOf(PLAN, 'six-shared');
const PAPERS = lenderDocument(SOURCES);
const { result } = SOURCES;
const { statements, funding, loans } = result.finance;

describe('the papers for a lender', () => {
  it('balance uses and sources of funds to the cent', () => {
    const uses = tableOf(PAPERS, 'request', 'Uses');
    const from = tableOf(PAPERS, 'request', 'Sources');
    const total = rowOf(uses, 'Total')[0] ?? '';
    expect(rowOf(from, 'Total')[0]).toBe(total);
    expect(cents(total)).toBe(funding.total);
    for (const table of [uses, from]) {
      expect(sum(table.rows.slice(0, -1).map(({ cells }) => cents(cells[1] ?? '')))).toBe(funding.total);
    }
  });

  it('balance the balance sheet to the cent in every year', () => {
    const table = tableOf(PAPERS, 'yearly', 'Balance sheet');
    const line = (label: string) => rowOf(table, label).map(cents);
    expect(line('Assets')).toEqual(line('Debts and equity'));
    expect(line('Assets')).toEqual([1, 2, 3, 4, 5, 6, 7].map((year) => statements.balance.totalAssets[12 * year]));
    const parts = ['Cash in the bank', 'Owed by customers', 'Stock', 'Equipment at book value'].map(line);
    expect(line('Assets')).toEqual(line('Assets').map((_, k) => sum(parts.map((part) => part[k] ?? 0))));
  });

  it.each([
    ['Income statement by year', 'Sales', statements.income.revenue],
    ['Income statement by year', 'Net profit', statements.income.netProfit],
    ['Cash flow by year', 'Change of cash', statements.cash.net],
    ['Cash flow by year', 'Principal paid back', statements.cash.principalRepaid],
  ])('sums the months of the result: %s, %s', (caption, label, series) => {
    const years = rowOf(tableOf(PAPERS, 'yearly', caption), label).map(cents);
    expect(years).toEqual(years.map((_, year) => sum(series.slice(12 * year, 12 * year + 12))));
  });

  it('shows the first year as the result has it, month by month', () => {
    const cells = rowOf(tableOf(PAPERS, 'monthly', 'Cash flow'), 'Change of cash').map(read);
    const months = statements.cash.net.slice(0, 12);
    expect(cells).toEqual(
      [...months, sum(months)].map((value) => Math.sign(value) * Math.round(Math.abs(value) / 100) + 0),
    );
    expect(rowOf(tableOf(PAPERS, 'monthly', 'Balance sheet'), 'Cash in the bank')).toHaveLength(13);
  });

  it('carries each loan to nothing, by year and month by month', () => {
    for (const loan of loans) {
      const years = tableOf(PAPERS, 'debt', loan.name);
      const months = tableOf(PAPERS, 'schedules', loan.name);
      expect(years.rows.at(-2)?.cells.at(-1)).toBe('–');
      expect(months.rows).toHaveLength(loan.schedule.length);
      expect(cents(rowOf(years, 'In all')[3] ?? '')).toBe(sum(loan.schedule.map((row) => row.payment)));
    }
  });

  it('says cover by year and its lowest as the result has them', () => {
    const table = tableOf(PAPERS, 'cover', 'Debt service cover');
    const { coverByYear, coverByYearOwnerPaid, lowestCover, lowestCoverOwnerPaid } = result.finance;
    const ratio = (cover: number | null) => (cover === null ? '—' : cover.toFixed(2).replace('-', '−'));
    const column = (k: number) => table.rows.slice(0, -1).map(({ cells }) => cells[k] ?? '');
    expect(column(3)).toEqual(coverByYear.map(ratio));
    expect(column(5)).toEqual(coverByYearOwnerPaid.map(ratio));
    expect(table.rows.at(-1)?.cells.slice(3)).toEqual([ratio(lowestCover), '', ratio(lowestCoverOwnerPaid)]);
    // What is earned and due is shown, and makes the cover.
    const earned = column(1).map(read);
    const due = column(2).map(read);
    const tax = coverByYear.map((_, year) => sum(statements.income.tax.slice(12 * year, 12 * year + 12)) / 100);
    expect(earned.map((money, k) => ratio(money / (due[k] ?? 0)))).toEqual(column(3));
    expect(earned.map((money, k) => ratio((money + (tax[k] ?? 0)) / (due[k] ?? 0)))).toEqual(column(4));
  });

  it('sells no more than the market takes or can be made, and for what the income statement says', () => {
    const { rows } = tableOf(PAPERS, 'sales', 'Volumes');
    const named = (ending: string) =>
      rows.filter(({ cells }) => cells[0]?.endsWith(ending)).map(({ cells }) => cells.slice(1).map(read));
    const [takes, made, sold] = [named(': the market takes'), named(': could be made'), named(': sold')];
    expect(sold).toHaveLength(PLAN.products.length);
    sold.forEach((years, k) => {
      years.forEach((mass, year) => {
        expect(mass).toBeLessThanOrEqual(Math.min(takes[k]?.[year] ?? 0, made[k]?.[year] ?? 0));
      });
    });
    const table = tableOf(PAPERS, 'sales', 'By product');
    const products = table.rows.slice(0, -1).map(({ cells }) => cells.slice(4).map(read));
    for (const { cells } of table.rows.slice(0, -1)) {
      expect(Math.abs(read(cells[1] ?? '') - read(cells[2] ?? '') - read(cells[3] ?? ''))).toBeLessThan(0.02);
    }
    rowOf(table, 'Sales')
      .slice(3)
      .map(read)
      .forEach((all, year) => {
        const year12 = statements.income.revenue.slice(12 * year, 12 * year + 12);
        expect(all).toBe(Math.round(sum(year12) / 100));
        expect(Math.abs(sum(products.map((years) => years[year] ?? 0)) - all)).toBeLessThanOrEqual(products.length);
      });
  });

  it('reads its ratios from the balance sheet', () => {
    const table = tableOf(PAPERS, 'security', 'At the end of the year');
    const { loans: owed, equipment, totalEquity, totalAssets } = statements.balance;
    const share = (part: readonly number[], whole: readonly number[]) =>
      formatPercent((part[12] ?? 0) / (whole[12] ?? 0));
    expect(rowOf(table, 'Loans over equipment')[0]).toBe(share(owed, equipment));
    expect(rowOf(table, 'Equity over all assets')[0]).toBe(share(totalEquity, totalAssets));
  });

  it('speaks of the owner, not to the owner', () => {
    const texts = PAPERS.sections.flatMap(({ blocks }) => blocks.flatMap(textsOf));
    expect(texts.filter((text) => /\b(you|your|yours)\b/i.test(text))).toEqual([]);
  });

  it('gives every range the unit of its value', () => {
    const { rows } = tableOf(PAPERS, 'assumptions', 'Values');
    const ranged = rows.filter(({ kind, cells }) => kind !== 'heading' && cells[2] !== '');
    expect(ranged.length).toBeGreaterThan(10);
    const unit = (text: string | undefined) =>
      text
        ?.replace(/^.* to /, '')
        .replace(/^[$−\d.,]+/, '')
        .trim();
    for (const { cells } of ranged) expect(unit(cells[2])).toBe(unit(cells[1]));
    for (const { cells } of rows) expect(cells.join(' ')).not.toMatch(/\de[-+]\d/);
  });

  it('writes figures as the sheet does', () => {
    const table = tableOf(PAPERS, 'returns', 'Return');
    for (const id of ['payback', 'npv', 'irr', 'mirr', 'cashNeeded']) {
      const output = OUTPUTS.find((candidate) => candidate.id === id);
      const expected = output && quantityWithUnit(output.read(result), output.dimension, SOURCES.shown);
      expect(rowOf(table, output?.label ?? '')[0]).toBe(expected);
    }
  });

  it('lists every value with its origin, guesses marked', () => {
    const { rows } = tableOf(PAPERS, 'assumptions', 'Values');
    const wage = rows.find(({ cells }) => cells[0] === 'Wage');
    expect(wage?.cells[3]).toBe(PLAN.crew.wage.origin);
    for (const row of rows) expect(row.kind === 'guess').toBe(row.cells[3] === 'guess');
    expect(rows.filter(({ kind }) => kind === 'guess').length).toBeGreaterThan(20);
    expect(rows.some(({ cells }) => cells[0]?.includes('Strawberry'))).toBe(true);
  });

  it('names every hazard and whom to ask', () => {
    const items = PAPERS.sections
      .find(({ id }) => id === 'cautions')
      ?.blocks.flatMap((block) => (block.kind === 'list' ? block.items : []));
    expect(items?.map(({ about }) => about)).toEqual([
      'Power',
      'Vacuum vessels',
      'Oil mist and exhaust',
      'Hot shelves',
      'Refrigerant',
      'Food safety and labelling',
      'Debt and tax',
    ]);
    for (const { words } of items ?? []) expect(words).toMatch(/licensed|certified|local|authority|makers/);
  });

  it.each([
    ['a purchase', SOURCES],
    ['today itself', sourcesOf(PLAN, 'today')],
    [
      'no loan',
      sourcesOf(
        planWith((document) => {
          document.financing.loans = [];
        }),
        'four-shared',
      ),
    ],
  ])('holds no figure that is none: %s', (_what, sources) => {
    const papers = lenderDocument(sources);
    const texts = [
      ...papers.facts.flatMap(({ value, note }) => [value, note ?? '']),
      ...papers.sections.flatMap(({ blocks }) => blocks.flatMap(textsOf)),
    ];
    expect(texts.filter((text) => /NaN|undefined|null|Infinity|\[object/.test(text))).toEqual([]);
    for (const { blocks } of papers.sections) {
      for (const block of blocks) {
        if (block.kind !== 'table') continue;
        const { head, rows } = block.table;
        expect(rows.filter(({ kind, cells }) => kind !== 'heading' && cells.length !== head.length)).toEqual([]);
      }
    }
  });
});
