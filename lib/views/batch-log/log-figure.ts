import { columnField, type FigureColumn } from '../../plan/log-text/log-columns.ts';
import type { UnitSystem } from '../../units/dimension.ts';
import { convertedFigure, entryFigure } from '../fields/entry-figure.ts';
import { entryUnit } from '../fields/entry-unit.ts';
import { NONE } from '../format-number.ts';

/** The unit in which a figure of the log is shown and asked for. */
export function logUnit(column: FigureColumn, system: UnitSystem): string {
  return entryUnit(columnField(column), system);
}

/** A figure of the log in the shown unit, as it is edited; empty for none. */
export function logFigureText(value: number | null, column: FigureColumn, system: UnitSystem): string {
  if (value === null) return '';
  const field = columnField(column);
  return String(convertedFigure(value, field.dimension, field.unit, entryUnit(field, system)));
}

/** The same as it stands in a table: thousands marked, a dash for none. */
export function logFigure(value: number | null, column: FigureColumn, system: UnitSystem): string {
  const text = logFigureText(value, column, system);
  return text === '' ? NONE : entryFigure(Number(text));
}
