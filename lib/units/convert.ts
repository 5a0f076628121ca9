import { DIMENSIONS, type Dimension, SHOWN_UNITS, type Unit, type UnitSystem } from './dimension.ts';

/** The unit with this symbol among those of a dimension; undefined when the dimension has no such unit. */
export function findUnit(dimension: Dimension, symbol: string): Unit | undefined {
  const units: readonly Unit[] = DIMENSIONS[dimension];
  return units.find((unit) => unit.symbol === symbol);
}

/** All unit symbols of a dimension, the SI unit first. */
export function unitSymbols(dimension: Dimension): readonly string[] {
  return DIMENSIONS[dimension].map((unit) => unit.symbol);
}

/** The unit symbol used inside the engine for a dimension. */
export function baseUnit(dimension: Dimension): string {
  return DIMENSIONS[dimension][0].symbol;
}

/** The unit symbol shown to the user for a dimension. */
export function shownUnit(dimension: Dimension, system: UnitSystem): string {
  return SHOWN_UNITS[system][dimension] ?? baseUnit(dimension);
}

function requireUnit(dimension: Dimension, symbol: string): Unit {
  const unit = findUnit(dimension, symbol);
  if (!unit)
    throw new RangeError(`no unit "${symbol}" for ${dimension}; expected one of ${unitSymbols(dimension).join(', ')}`);
  return unit;
}

/** Value in the engine's unit of a value given in `symbol`. Throws RangeError on a unit that is not of the dimension. */
export function toBase(value: number, dimension: Dimension, symbol: string): number {
  const unit = requireUnit(dimension, symbol);
  return value * unit.factor + (unit.offset ?? 0);
}

/** Value in `symbol` of a value in the engine's unit. Throws RangeError on a unit that is not of the dimension. */
export function fromBase(value: number, dimension: Dimension, symbol: string): number {
  const unit = requireUnit(dimension, symbol);
  return (value - (unit.offset ?? 0)) / unit.factor;
}
