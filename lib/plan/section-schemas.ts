import * as z from 'zod';
import { sectionShape } from '../inputs/field-schema.ts';
import { LIMITS } from './limits.ts';
import {
  currencySchema,
  dateSchema,
  idSchema,
  nameSchema,
  noteSchema,
  notesSchema,
  placeSchema,
} from './text-schemas.ts';

const identity = { id: idSchema, name: nameSchema };

/** 0 = Monday … 6 = Sunday. */
const weekdaysSchema = z.array(z.number().int().min(0).max(6)).max(7);

const shiftSchema = z.strictObject({
  weekdays: weekdaysSchema,
  ...sectionShape('shift'),
});

const patternSchema = z.strictObject({ ...identity, shifts: z.array(shiftSchema).max(LIMITS.shifts) });

const priceBandSchema = z.strictObject({ ...identity, weekdays: weekdaysSchema, ...sectionShape('priceBand') });

export const siteSchema = z.strictObject({
  shopName: nameSchema,
  place: placeSchema,
  currency: currencySchema,
  unitSystem: z.enum(['us', 'si']),
  ...sectionShape('site'),
  /** Hours with a price of their own; the first that matches counts. Empty for one price round the clock. */
  priceBands: z.array(priceBandSchema).max(LIMITS.priceBands),
});

export const crewSchema = z.strictObject({
  ...sectionShape('crew'),
  patterns: z.array(patternSchema).min(1).max(LIMITS.catalogue),
});

export const freezerSchema = z.strictObject(sectionShape('freezer'));

export const financingSchema = z.strictObject({
  ...sectionShape('financing'),
  loans: z.array(z.strictObject({ ...identity, ...sectionShape('loan') })).max(LIMITS.loans),
});

export const productSchema = z.strictObject({ ...identity, ...sectionShape('product') });

export const chamberSchema = z.strictObject({ ...identity, ...sectionShape('chamber') });

export const pumpSchema = z.strictObject({
  ...identity,
  ...sectionShape('pump'),
  /** Measured speeds in Pa and m³/h; empty means that the rated speed and the lowest pressure tell all. */
  speedTable: z.array(z.strictObject(sectionShape('speedPoint'))).max(LIMITS.speedPoints),
});

export const hoseSchema = z.strictObject({ ...identity, ...sectionShape('hose') });

export const scenarioSchema = z.strictObject({
  ...identity,
  note: noteSchema,
  /** What somebody wrote beside single cells of its row, by the column's id. */
  notes: notesSchema,
  /** The scenario that runs until this one is bought; null when that is the shop of today. */
  after: idSchema.nullable(),
  chambers: z
    .array(z.strictObject({ chamber: idSchema, ...sectionShape('scenarioChamber') }))
    .min(1)
    .max(LIMITS.catalogue),
  pump: idSchema,
  roughingPump: idSchema.nullable(),
  hose: idSchema,
  mix: z
    .array(z.strictObject({ product: idSchema, ...sectionShape('mixShare') }))
    .min(1)
    .max(LIMITS.catalogue),
  pattern: idSchema,
  ...sectionShape('scenario'),
});

const loggedBatchSchema = z.strictObject({
  kind: z.literal('batch'),
  id: idSchema,
  date: dateSchema,
  chamber: idSchema,
  product: idSchema,
  ...sectionShape('loggedBatch'),
  note: noteSchema,
});

const pressureRiseSchema = z.strictObject({
  kind: z.literal('pressureRise'),
  id: idSchema,
  date: dateSchema,
  chamber: idSchema,
  ...sectionShape('pressureRise'),
  note: noteSchema,
});

export const logEntrySchema = z.discriminatedUnion('kind', [loggedBatchSchema, pressureRiseSchema]);
