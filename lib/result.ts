/** A success with its value, or a failure with a tagged reason. */
export type Result<Value, Failure> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly error: Failure };

/** One thing wrong (or doubtful) with what the user entered. An `error` stops the computation; a `warning` does not. */
export interface Finding {
  readonly severity: 'error' | 'warning';
  /** Path of the field in the plan, such as `products.2.load`. */
  readonly field: string;
  /** The value found there, as the user would recognise it. */
  readonly value: string;
  /** What is wrong, in plain words. */
  readonly problem: string;
  /** What would mend it, in plain words. */
  readonly remedy: string;
}

export function succeed<Value>(value: Value): { readonly ok: true; readonly value: Value } {
  return { ok: true, value };
}

export function fail<Failure>(error: Failure): { readonly ok: false; readonly error: Failure } {
  return { ok: false, error };
}

/** Stops a switch from compiling when a case is missing; throws if one slips through at run time. */
export function assertNever(value: never): never {
  throw new Error(`unexpected case: ${JSON.stringify(value)}`);
}
