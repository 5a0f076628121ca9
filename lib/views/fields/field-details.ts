import type { InputField, QuantityField } from '../../inputs/input-field.ts';
import type { Origin, Quantity } from '../../inputs/quantity.ts';
import { fieldAtPath } from '../../plan/field-at-path.ts';
import { pathOfPlace, valueAtPlace } from '../../plan/place.ts';
import type { Plan } from '../../plan/plan-types.ts';
import { SOURCES, type Source } from '../../sources.ts';
import { shownAs } from '../entry-columns.ts';
import { NONE } from '../format-number.ts';
import { type ShownAs, unitSign, withUnit } from '../format-quantity.ts';
import { entryUnit } from './entry-unit.ts';
import type { FieldCell, FieldFault } from './field-grid.ts';
import { figureShown } from './quantity-look.ts';

export const ORIGIN_LABELS: Readonly<Record<Origin, string>> = {
  measured: 'measured',
  quoted: 'quoted',
  handbook: 'handbook',
  guess: 'guess',
};

/** What a quantity carries beside its value. */
export interface QuantityDetails {
  readonly origin: Origin;
  readonly unit: string;
  /** Empty when none is given. */
  readonly low: string;
  readonly high: string;
  /** The user's own words, or a key of the bibliography. */
  readonly source: string;
  /** Author, title and year when the source is in the bibliography; empty when it is not. */
  readonly reference: string;
  readonly note: string;
}

/** Everything there is to tell of one field. */
export interface FieldDetails {
  readonly owner: string;
  readonly label: string;
  /** The value with its unit, as it stands; empty while a text waits to be mended. */
  readonly value: string;
  readonly meaning: string;
  /** Whom to ask before relying on it; empty when there is no need. */
  readonly ask: string;
  /** What is allowed and what is usual. */
  readonly range: string;
  /** What each word to choose from means. */
  readonly choices: readonly { readonly label: string; readonly meaning: string }[];
  readonly fault: FieldFault | null;
  readonly quantity: QuantityDetails | null;
}

function rangeWords(field: InputField, shown: ShownAs): string {
  if (field.kind !== 'quantity' && field.kind !== 'number') return '';
  const unit = unitSign(entryUnit(field, shown.system), shown.currency);
  const figure = (value: number) => withUnit(figureShown(field, value, field.unit, shown), unit);
  const usual = field.value === null ? 'Usually none.' : `Usually ${figure(field.value)}.`;
  return `From ${figure(field.min)} to ${figure(field.max)}. ${usual}`;
}

function referenceOf(key: string | undefined): string {
  if (key === undefined || !Object.hasOwn(SOURCES, key)) return '';
  const { author, title, year, note }: Source = SOURCES[key as keyof typeof SOURCES];
  return `${author}: ${title}, ${year}.${note ? ` ${note}` : ''}`;
}

function quantityDetails(field: QuantityField, quantity: Quantity, shown: ShownAs): QuantityDetails {
  const bound = (value: number | undefined) =>
    value === undefined ? '' : figureShown(field, value, quantity.unit, shown);
  return {
    origin: quantity.origin,
    unit: unitSign(entryUnit(field, shown.system), shown.currency),
    low: bound(quantity.low),
    high: bound(quantity.high),
    source: quantity.source ?? '',
    reference: referenceOf(quantity.source),
    note: quantity.note ?? '',
  };
}

function valueWords({ fault, text, look }: FieldCell): string {
  if (fault) return '';
  return text === '' || text === NONE ? text : withUnit(text, look.unit);
}

/** What there is to tell of a cell of the catalogues. */
export function fieldDetails(plan: Plan, cell: FieldCell): FieldDetails {
  const shown = shownAs(plan);
  const path = pathOfPlace(plan, cell.place);
  const field = path === null ? undefined : fieldAtPath(path);
  const value = valueAtPlace(plan, cell.place);
  const { look, owner, fault } = cell;
  const isQuantity = field?.kind === 'quantity' && value !== null && value !== undefined;
  return {
    owner,
    label: look.label,
    value: valueWords(cell),
    meaning: look.meaning,
    ask: field?.kind === 'quantity' ? (field.ask ?? '') : '',
    range: field ? rangeWords(field, shown) : '',
    choices: field?.kind === 'choice' ? field.options : [],
    fault,
    quantity: isQuantity ? quantityDetails(field, value as Quantity, shown) : null,
  };
}
