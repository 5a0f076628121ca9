import type { InputField } from './input-field.ts';
import type { Quantity } from './quantity.ts';

type KeyOf<Id> = Id extends `${string}.${infer Key}` ? Key : never;

type OrNull<Row, Value> = Row extends { readonly nullable: true } ? Value | null : Value;

type ValueOf<Row> = Row extends { readonly kind: 'quantity' }
  ? OrNull<Row, Quantity>
  : Row extends { readonly kind: 'number' }
    ? OrNull<Row, number>
    : Row extends { readonly kind: 'flag' }
      ? boolean
      : Row extends { readonly kind: 'choice'; readonly options: readonly { readonly value: infer Option }[] }
        ? Option
        : never;

/** The object that holds one value for each row of a section: the row `chamber.leak` becomes the key `leak`. */
export type FieldValues<Rows extends readonly InputField[]> = {
  readonly [Row in Rows[number] as KeyOf<Row['id']>]: ValueOf<Row>;
};
