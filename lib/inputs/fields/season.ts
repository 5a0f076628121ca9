/** One month's weight in the demand for a product: the row `product.seasonJan` and its like. */
function month<Key extends string>(key: Key, name: string) {
  return {
    kind: 'number',
    id: `product.season${key}`,
    label: name,
    group: 'Season',
    dimension: 'fraction',
    unit: '%',
    value: 100,
    min: 0,
    max: 1000,
    meaning: `Demand in ${name} against the other months; only the proportions of the twelve count.`,
  } as const;
}

/** How the demand for a product is spread over the year. */
export const SEASON_FIELDS = [
  month('Jan', 'January'),
  month('Feb', 'February'),
  month('Mar', 'March'),
  month('Apr', 'April'),
  month('May', 'May'),
  month('Jun', 'June'),
  month('Jul', 'July'),
  month('Aug', 'August'),
  month('Sep', 'September'),
  month('Oct', 'October'),
  month('Nov', 'November'),
  month('Dec', 'December'),
] as const;
