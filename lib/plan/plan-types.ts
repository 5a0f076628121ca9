import type { z } from 'zod';
import type { planSchema } from './schema.ts';

type DeepReadonly<Value> = Value extends readonly (infer Item)[]
  ? readonly DeepReadonly<Item>[]
  : Value extends object
    ? { readonly [Key in keyof Value]: DeepReadonly<Value[Key]> }
    : Value;

/** The saved document: everything the planner knows of a shop. */
export type Plan = DeepReadonly<z.infer<typeof planSchema>>;

export type Site = Plan['site'];
export type PriceBand = Site['priceBands'][number];
export type Crew = Plan['crew'];
export type ShiftPattern = Crew['patterns'][number];
export type Shift = ShiftPattern['shifts'][number];
export type Freezer = NonNullable<Plan['freezer']>;
export type Financing = Plan['financing'];
export type Loan = Financing['loans'][number];
export type Product = Plan['products'][number];
export type ChamberType = Plan['chambers'][number];
export type PumpType = Plan['pumps'][number];
export type HoseType = Plan['hoses'][number];
export type Scenario = Plan['scenarios'][number];
export type LogEntry = Plan['batchLog'][number];
