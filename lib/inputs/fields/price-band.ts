import type { InputField } from '../input-field.ts';

/** Hours of the week in which electricity has a price of its own; the weekdays stand beside it in the plan. */
export const PRICE_BAND_FIELDS = [
  {
    kind: 'number',
    id: 'priceBand.start',
    label: 'From',
    group: 'Hours',
    dimension: 'time',
    unit: 'h',
    value: 16,
    min: 0,
    max: 24,
    meaning: 'Hour of the day at which this price starts.',
  },
  {
    kind: 'number',
    id: 'priceBand.end',
    label: 'To',
    group: 'Hours',
    dimension: 'time',
    unit: 'h',
    value: 21,
    min: 0,
    max: 24,
    meaning: 'Hour of the day at which it ends; earlier than the start for a price that runs over midnight.',
  },
  {
    kind: 'quantity',
    id: 'priceBand.price',
    label: 'Price',
    group: 'Hours',
    dimension: 'moneyPerEnergy',
    unit: 'money/kWh',
    value: 0.2,
    origin: 'guess',
    min: 0,
    max: 10,
    meaning: 'Price per kilowatt-hour in these hours; all other hours are at the price of the site.',
  },
] as const satisfies readonly InputField[];
