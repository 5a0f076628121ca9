import type { BasisPath, LenderBasis } from '../../model/lender-basis-types.ts';
import type { ScenarioResult } from '../../model/scenario-result.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { currencySign, type ShownAs } from '../format-quantity.ts';
import { assetRows } from './asset-sheet.ts';
import { AssumptionSheet } from './assumption-sheet.ts';
import { checkSheet } from './check-sheet.ts';
import { type Expression, lowestOf, minus, plus, sumOf } from './expression.ts';
import { fillAssumptions } from './fill-assumptions.ts';
import { type DebtRows, LoanSheet } from './loan-sheet.ts';
import { NameBook } from './name-book.ts';
import { PurchaseSheet } from './purchase-sheet.ts';
import { type ReturnCells, returnSheet } from './return-sheet.ts';
import { salesRows } from './sales-sheet.ts';
import { seasonSheet } from './season-sheet.ts';
import { type Statements, statementSheet } from './statement-sheet.ts';
import { summarySheet } from './summary-sheet.ts';
import { WeekSheet } from './week-sheet.ts';
import { massUnit, putConstants, type WorkbookContext } from './workbook-context.ts';
import type { WorkbookFile, WorkbookSheet } from './workbook-types.ts';
import { type WrittenOff, writtenOff } from './written-off.ts';
import { yearSheet } from './year-sheet.ts';

interface Common {
  readonly context: WorkbookContext;
  readonly weeks: WeekSheet;
  readonly purchases: PurchaseSheet;
  readonly loans: LoanSheet;
  readonly rule: WrittenOff;
}

/** One way to run the shop with its sheets. */
interface Way {
  readonly statements: Statements;
  readonly sheets: readonly WorkbookSheet[];
}

const TODAY = 'Today';
const PLAN = 'Plan';

function contextOf(plan: Plan, basis: LenderBasis): { context: WorkbookContext; seasons: WorkbookSheet } {
  const names = new NameBook();
  const assumptions = new AssumptionSheet(plan, names);
  const shown: ShownAs = { system: plan.site.unitSystem, currency: plan.site.currency };
  fillAssumptions(assumptions, plan, basis);
  const { sheet, seasons } = seasonSheet(plan, names);
  const constants = putConstants(assumptions);
  const money = currencySign(plan.site.currency);
  return {
    context: { plan, basis, shown, names, assumptions, constants, seasons, money, mass: massUnit(shown) },
    seasons: sheet,
  };
}

/** Columns that hold every loan to its end. */
function loanMonths({ plan, basis }: WorkbookContext, result: ScenarioResult): number {
  const ends = result.finance.loans.map(({ schedule }) => (schedule.at(-1)?.month ?? 0) + 1);
  return Math.max(basis.horizonMonths, plan.financing.loans.length > 0 ? Math.max(0, ...ends) : 0);
}

function wayOf(
  common: Common,
  path: BasisPath,
  name: string,
  title: string,
  debt: DebtRows,
  today: Statements | null,
): Way {
  const { context, weeks, purchases, rule } = common;
  const failures = path.phases.map((phase) =>
    weeks.failures(phase, `${name}, ${context.basis.weeks[phase.week]?.name ?? ''}`),
  );
  const sales = salesRows(context, path, weeks, failures, name);
  const assets = assetRows(context, path, purchases, rule, name);
  const bought = today ? purchases : null;
  const statements = statementSheet(context, { sales, assets, debt, purchases: bought, today }, name, title);
  return { statements, sheets: [statements.sheet.finish(), sales.sheet.finish(), assets.sheet.finish()] };
}

/** Both ways; for today itself there is only one, which is the plan. */
function waysOf(common: Common, result: ScenarioResult): { readonly plan: Way; readonly today: Way | null } {
  const { context, loans } = common;
  const { basis } = context;
  if (basis.path === null) {
    return {
      plan: wayOf(common, basis.today, PLAN, `${result.name}, month by month`, loans.debt(PLAN, true), null),
      today: null,
    };
  }
  const stay = `Staying as today, month by month`;
  const today = wayOf(common, basis.today, TODAY, stay, loans.debt(TODAY, true), null);
  const title = `${result.name}, month by month`;
  return { plan: wayOf(common, basis.path, PLAN, title, loans.debt(PLAN, false), today.statements), today };
}

function returnsOf(context: WorkbookContext, ways: ReturnType<typeof waysOf>, result: ScenarioResult) {
  const found = result.finance.versusToday;
  if (!ways.today || !found) return null;
  const title = `${result.name} against staying as today`;
  return returnSheet(context, ways.plan.statements, ways.today.statements, found, title);
}

function debtCheck({ sheet, rows }: Statements): readonly (readonly [string, Expression])[] {
  const last = sheet.horizon - 1;
  const all = (id: 'loansDrawn' | 'interestAdded' | 'principalRepaid') => sumOf(rows[id].range(0, last));
  const moved = plus(rows.loans.at(-1), all('loansDrawn'), all('interestAdded'), all('principalRepaid'));
  return [['Plan: loans drawn and paid back against what is owed at the end', minus(moved, rows.loans.at(last))]];
}

/**
 * The lender's workbook: projections of a scenario as formulas from a sheet of assumptions, with the counts of the simulated
 * weeks as values. What each formula comes to is kept beside it.
 * @param basis of this scenario of this plan
 * @param result of the same
 */
export function lenderWorkbook(plan: Plan, basis: LenderBasis, result: ScenarioResult): WorkbookFile {
  const { context, seasons } = contextOf(plan, basis);
  const weeks = new WeekSheet(context);
  const purchases = new PurchaseSheet(context);
  const loans = new LoanSheet(context, purchases, loanMonths(context, result));
  const { rule, sheet: table } = writtenOff(context);
  const ways = waysOf({ context, weeks, purchases, loans, rule }, result);
  const { statements } = ways.plan;
  const returns = returnsOf(context, ways, result);
  const named = [[PLAN, statements], ...(ways.today ? [[TODAY, ways.today.statements]] : [])] as [string, Statements][];
  const checks = checkSheet(named, debtCheck(statements));
  const lowestCash = lowestOf(statements.rows.cash.range(-1, basis.horizonMonths - 1));
  const cells: ReturnCells | null = returns?.cells ?? null;
  return {
    title: `${plan.site.shopName}: ${result.name}`,
    names: context.names.all(),
    sheets: [
      summarySheet(context, result, statements, cells, checks.verdict, lowestCash),
      context.assumptions.finish(),
      seasons,
      weeks.finish(),
      purchases.finish(),
      loans.sheet.finish(),
      yearSheet(context, statements, `${result.name}, by year`),
      ...ways.plan.sheets,
      ...(returns ? [returns.sheet.finish()] : []),
      ...(ways.today?.sheets ?? []),
      ...(table ? [table] : []),
      checks.sheet,
    ],
  };
}
