import type { NumberField, QuantityField } from '../../inputs/input-field.ts';
import { shownUnit } from '../../units/convert.ts';
import type { UnitSystem } from '../../units/dimension.ts';

/** Lengths that are asked for in metres are too long for inches and millimetres. */
const LONG_LENGTH: Readonly<Record<UnitSystem, string>> = { us: 'ft', si: 'm' };

/**
 * The unit in which a catalogue shows and asks for a field. Where the two systems differ, it is the system's; where they
 * do not, the row's own, so that a task is in minutes and a useful life in years.
 */
export function entryUnit(field: NumberField | QuantityField, system: UnitSystem): string {
  const { dimension, unit } = field;
  if (dimension === 'length' && unit === 'm') return LONG_LENGTH[system];
  return shownUnit(dimension, 'us') === shownUnit(dimension, 'si') ? unit : shownUnit(dimension, system);
}
