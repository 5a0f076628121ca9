import type { BasisPath, LenderBasis } from '../../model/lender-basis-types.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { type ShownAs, shownValue, unitText } from '../format-quantity.ts';
import type { AssumptionSheet } from './assumption-sheet.ts';
import { type CellRange, type Expression, over, plus, reference, times } from './expression.ts';
import type { NameBook } from './name-book.ts';

/** Numbers that no plan changes, under their names. */
export interface Constants {
  readonly weeksPerMonth: Expression;
  readonly daysPerMonth: Expression;
}

/** What all sheets of a workbook need. */
export interface WorkbookContext {
  readonly plan: Plan;
  readonly basis: LenderBasis;
  readonly shown: ShownAs;
  readonly names: NameBook;
  readonly assumptions: AssumptionSheet;
  readonly constants: Constants;
  /** Weights of the calendar months by product; January first. */
  readonly seasons: ReadonlyMap<string, CellRange>;
  /** Sign of the currency. */
  readonly money: string;
  /** Unit of weight. */
  readonly mass: string;
}

/** A weight in the unit of the workbook. @param kilograms [kg] */
export function inMass(context: WorkbookContext, kilograms: number): number {
  return shownValue(kilograms, 'mass', context.shown);
}

/** Products that a path makes, in the order of the plan. */
export function productsOf({ capacity }: BasisPath): readonly string[] {
  return capacity.map(({ productId }) => productId);
}

export function massUnit(shown: ShownAs): string {
  return unitText('mass', shown);
}

/** Weeks and days of a month of 365.25/12 days. */
export function putConstants(assumptions: AssumptionSheet): Constants {
  assumptions.heading('Calendar');
  const number = (value: number) => reference(String(value), value);
  const days = assumptions.constant('days_per_month', 'Days in a month', over(number(365.25), 12), 'days');
  const weeks = assumptions.constant('weeks_per_month', 'Weeks in a month', over(days, 7), 'weeks');
  return { daysPerMonth: days, weeksPerMonth: weeks };
}

/** (1 − share)·first + share·second. */
export function blend(share: Expression, first: Expression, second: Expression): Expression {
  return plus(times({ ...share, text: `(1-${share.text})`, value: 1 - share.value }, first), times(share, second));
}
