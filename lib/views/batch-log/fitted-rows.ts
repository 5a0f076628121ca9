import type { Calibration, FittedValue, InputName, ValueRange } from '../../insight/calibration/calibration.ts';
import { columnField } from '../../plan/log-text/log-columns.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { fromBase } from '../../units/convert.ts';
import { entryUnit } from '../fields/entry-unit.ts';
import { formatSensible, formatTiny } from '../format-number.ts';
import { type ShownAs, unitSign } from '../format-quantity.ts';
import { fittedField, isWorthUsing, toldBy } from './fitted-quantity.ts';
import { logUnit } from './log-figure.ts';

/** One value before and after, in words. */
export interface FittedRow {
  readonly key: string;
  /** The chamber or product. */
  readonly owner: string;
  readonly label: string;
  readonly unit: string;
  readonly before: string;
  readonly believed: string;
  readonly after: string;
  readonly range: string;
  readonly toldBy: string;
  readonly verdict: string;
  /** What would tell it better; empty when it is told. */
  readonly advice: string;
  readonly isUsed: boolean;
}

function ownerName(plan: Plan, { list, id }: Pick<InputName, 'list' | 'id'>): string {
  return plan[list].find((item) => item.id === id)?.name ?? id;
}

function inputWords(plan: Plan, name: InputName): string {
  return `"${fittedField(name).label}" of ${ownerName(plan, name)}`;
}

const LOAD_WORDS: Readonly<Record<number, string>> = {
  0.5: 'half the usual load',
  1: 'the usual load',
  1.5: 'one and a half times the usual load',
};

function adviceWords(plan: Plan, { verdict, next, from }: FittedValue): string {
  if (verdict === 'determined') return '';
  if (from === 'weights') return 'Weigh more batches before and after.';
  if (!next) return 'No further batch of these foods would tell it much better.';
  const { unitSystem } = plan.site;
  const { dimension } = columnField('wet');
  const unit = logUnit('wet', unitSystem);
  const wet = `${formatSensible(Number(fromBase(next.wet, dimension, unit).toPrecision(2)))} ${unit}`;
  const product = ownerName(plan, { list: 'products', id: next.product });
  const load = LOAD_WORDS[next.loadFactor] ?? '';
  return `Dry ${wet} of ${product} (${load}) and log it: the range would shrink to ${Math.round(100 * next.narrowsTo)} %.`;
}

function verdictWords(plan: Plan, { verdict, partner }: FittedValue): string {
  if (verdict === 'determined') return 'Told by the log.';
  if (verdict === 'undetermined') return 'Not told by the log: stays as believed.';
  return partner ? `Told only together with ${inputWords(plan, partner)}.` : 'Told in part.';
}

function rowOf(plan: Plan, shown: ShownAs, fitted: FittedValue): FittedRow {
  const field = fittedField(fitted);
  const unit = entryUnit(field, shown.system);
  const figure = (value: number) => formatTiny(fromBase(value, field.dimension, unit));
  const rangeText = ({ low, high }: ValueRange) => `${figure(low)} to ${figure(high)}`;
  return {
    key: `${fitted.list} ${fitted.id} ${fitted.key}`,
    owner: ownerName(plan, fitted),
    label: field.label,
    unit: unitSign(unit, shown.currency),
    before: figure(fitted.before),
    believed: rangeText(fitted.believed),
    after: figure(fitted.after.value),
    range: rangeText(fitted.after),
    toldBy: toldBy(fitted),
    verdict: verdictWords(plan, fitted),
    advice: adviceWords(plan, fitted),
    isUsed: isWorthUsing(fitted),
  };
}

/** All values a fit has looked at, in the order of the plan's parts. */
export function fittedRows(plan: Plan, shown: ShownAs, calibration: Calibration): readonly FittedRow[] {
  const owners = [...plan.chambers, ...plan.products].map(({ id }) => id);
  const place = ({ list, id }: FittedValue) => (list === 'chambers' ? 0 : 1000) + owners.indexOf(id);
  return [...calibration.values].sort((a, b) => place(a) - place(b)).map((fitted) => rowOf(plan, shown, fitted));
}
