import * as z from 'zod';
import { LIMITS } from './limits.ts';
import {
  chamberSchema,
  crewSchema,
  financingSchema,
  freezerSchema,
  hoseSchema,
  logEntrySchema,
  productSchema,
  pumpSchema,
  scenarioSchema,
  siteSchema,
} from './section-schemas.ts';
import { nameSchema } from './text-schemas.ts';

export const PLAN_FORMAT = 'rimeplan-plan';

/** The version this code writes. */
export const PLAN_VERSION = 1;

/** The shape of a saved plan; rules that span several fields are in `checkPlan`. */
export const planSchema = z.strictObject({
  format: z.literal(PLAN_FORMAT),
  version: z.literal(PLAN_VERSION),
  name: nameSchema,
  site: siteSchema,
  crew: crewSchema,
  /** Null when loads arrive frozen or are frozen in the chamber. */
  freezer: freezerSchema.nullable(),
  financing: financingSchema,
  products: z.array(productSchema).min(1).max(LIMITS.catalogue),
  chambers: z.array(chamberSchema).min(1).max(LIMITS.catalogue),
  pumps: z.array(pumpSchema).min(1).max(LIMITS.catalogue),
  hoses: z.array(hoseSchema).min(1).max(LIMITS.catalogue),
  /** The first is the shop as it is today. */
  scenarios: z.array(scenarioSchema).min(1).max(LIMITS.scenarios),
  batchLog: z.array(logEntrySchema).max(LIMITS.batchLog),
});
