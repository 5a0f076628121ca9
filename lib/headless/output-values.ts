import type { OutputField } from '../model/outputs/output-field.ts';
import { OUTPUTS } from '../model/outputs.ts';
import type { ScenarioResult } from '../model/scenario-result.ts';
import { baseUnit } from '../units/convert.ts';

export interface OutputValue {
  /** Null where there is none to give. */
  readonly value: number | null;
  /** SI; '1' for a share, '' for a count, 'money' for the plan's currency. */
  readonly unit: string;
}

function outputValue(field: OutputField, result: ScenarioResult): OutputValue {
  const value = field.read(result);
  // JSON has no word for what is not a number.
  return { value: value !== null && Number.isFinite(value) ? value : null, unit: baseUnit(field.dimension) };
}

/** Every computed quantity of the register by its id, in base units. */
export function outputValues(
  result: ScenarioResult,
  fields: readonly OutputField[] = OUTPUTS,
): Readonly<Record<string, OutputValue>> {
  return Object.fromEntries(fields.map((field) => [field.id, outputValue(field, result)]));
}
