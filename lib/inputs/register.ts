import { LOGGED_BATCH_FIELDS, PRESSURE_RISE_FIELDS } from './fields/batch-log.ts';
import { CHAMBER_FIELDS } from './fields/chamber.ts';
import { CREW_FIELDS } from './fields/crew.ts';
import { FINANCING_FIELDS } from './fields/financing.ts';
import { FREEZER_FIELDS } from './fields/freezer.ts';
import { HOSE_FIELDS } from './fields/hose.ts';
import { LOAN_FIELDS } from './fields/loan.ts';
import { MIX_SHARE_FIELDS } from './fields/mix-share.ts';
import { PRICE_BAND_FIELDS } from './fields/price-band.ts';
import { PRODUCT_FIELDS } from './fields/product.ts';
import { PUMP_FIELDS } from './fields/pump.ts';
import { SCENARIO_FIELDS } from './fields/scenario.ts';
import { SCENARIO_CHAMBER_FIELDS } from './fields/scenario-chamber.ts';
import { SHIFT_FIELDS } from './fields/shift.ts';
import { SITE_FIELDS } from './fields/site.ts';
import { SPEED_POINT_FIELDS } from './fields/speed-point.ts';
import type { InputField } from './input-field.ts';

/** Every input of the planner, by section. Schema, sheets, help and glossary are made from these rows. */
export const REGISTER = {
  chamber: CHAMBER_FIELDS,
  pump: PUMP_FIELDS,
  speedPoint: SPEED_POINT_FIELDS,
  hose: HOSE_FIELDS,
  product: PRODUCT_FIELDS,
  site: SITE_FIELDS,
  priceBand: PRICE_BAND_FIELDS,
  crew: CREW_FIELDS,
  shift: SHIFT_FIELDS,
  freezer: FREEZER_FIELDS,
  financing: FINANCING_FIELDS,
  loan: LOAN_FIELDS,
  scenario: SCENARIO_FIELDS,
  scenarioChamber: SCENARIO_CHAMBER_FIELDS,
  mixShare: MIX_SHARE_FIELDS,
  loggedBatch: LOGGED_BATCH_FIELDS,
  pressureRise: PRESSURE_RISE_FIELDS,
} as const satisfies Readonly<Record<string, readonly InputField[]>>;

export type Section = keyof typeof REGISTER;

const BY_ID: ReadonlyMap<string, InputField> = new Map(
  Object.values(REGISTER).flatMap((rows: readonly InputField[]) => rows.map((row) => [row.id, row] as const)),
);

/** The row with this id, such as `chamber.shelfArea`; undefined when there is none. */
export function findField(id: string): InputField | undefined {
  return BY_ID.get(id);
}

/** The row with this id. Throws RangeError when the register has none. */
export function fieldOf(id: string): InputField {
  const field = BY_ID.get(id);
  if (!field) throw new RangeError(`the register has no input "${id}"`);
  return field;
}

/** All rows of a section, in the order they are shown. */
export function fieldsOf(section: Section): readonly InputField[] {
  return REGISTER[section];
}

/** The key under which the plan keeps a row's value: the id without its section. */
export function keyOf(field: InputField): string {
  return field.id.slice(field.id.indexOf('.') + 1);
}
