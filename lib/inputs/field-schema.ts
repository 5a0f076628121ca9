import * as z from 'zod';
import { unitSymbols } from '../units/convert.ts';
import { type FieldProblem, numberProblem, quantityProblems } from './field-check.ts';
import type { FieldValues } from './field-values.ts';
import type { ChoiceField, InputField, NumberField, QuantityField } from './input-field.ts';
import { ORIGINS } from './quantity.ts';
import { fieldsOf, keyOf, type REGISTER, type Section } from './register.ts';

// The library would compile its schemas, which the page's policy forbids; browsers report even the attempt. It must be told
// before the first group of fields is described, and every such group is described with the help of this file.
z.config({ jitless: true });

const LONGEST_SOURCE = 300;
const LONGEST_NOTE = 2000;

function raise(context: z.RefinementCtx, found: FieldProblem): void {
  const { problem, remedy, key } = found;
  context.addIssue({ code: 'custom', message: problem, params: { remedy }, path: key === undefined ? [] : [key] });
}

function quantitySchema(field: QuantityField): z.ZodType {
  const shape = z.strictObject({
    value: z.number(),
    unit: z.enum([...unitSymbols(field.dimension)]),
    origin: z.enum(ORIGINS),
    low: z.number().optional(),
    high: z.number().optional(),
    source: z.string().max(LONGEST_SOURCE).optional(),
    note: z.string().max(LONGEST_NOTE).optional(),
  });
  return shape.superRefine((quantity, context) => {
    for (const found of quantityProblems(field, quantity)) raise(context, found);
  });
}

function numberSchema(field: NumberField): z.ZodType {
  return z.number().superRefine((value, context) => {
    const found = numberProblem(field, value, field.unit);
    if (found) raise(context, found);
  });
}

function choiceSchema(field: ChoiceField): z.ZodType {
  return z.enum(field.options.map((option) => option.value));
}

function bareSchema(field: InputField): z.ZodType {
  switch (field.kind) {
    case 'quantity':
      return quantitySchema(field);
    case 'number':
      return numberSchema(field);
    case 'flag':
      return z.boolean();
    case 'choice':
      return choiceSchema(field);
  }
}

/** The zod schema of one row's value in a plan. */
export function fieldSchema(field: InputField): z.ZodType {
  const schema = bareSchema(field);
  return 'nullable' in field && field.nullable ? schema.nullable() : schema;
}

type SectionShape<Name extends Section> = {
  [Key in keyof FieldValues<(typeof REGISTER)[Name]>]: z.ZodType<FieldValues<(typeof REGISTER)[Name]>[Key]>;
};

/** The zod schemas of all rows of a section, keyed as the plan keeps them. */
export function sectionShape<Name extends Section>(section: Name): SectionShape<Name> {
  return Object.fromEntries(fieldsOf(section).map((field) => [keyOf(field), fieldSchema(field)])) as SectionShape<Name>;
}
