import { DIMENSIONS, type Dimension, type Unit } from '../../units/dimension.ts';

/** Ways in which people write units, beside the symbols themselves, in plain signs and small letters. */
const OTHER_FORMS: Readonly<Record<string, readonly string[]>> = {
  m: ['metre', 'metres', 'meter', 'meters'],
  in: ['inch', 'inches', '"'],
  ft: ['foot', 'feet', "'"],
  'm²': ['m^2', 'sqm', 'sq m'],
  'ft²': ['ft^2', 'sqft', 'sq ft'],
  'in²': ['in^2', 'sq in'],
  'm³': ['m^3'],
  'ft³': ['ft^3', 'cu ft'],
  L: ['litre', 'litres', 'liter', 'liters'],
  gal: ['gallon', 'gallons'],
  kg: ['kgs', 'kilo', 'kilos', 'kilogram', 'kilograms'],
  g: ['gram', 'grams'],
  lb: ['lbs', 'pound', 'pounds'],
  oz: ['ounce', 'ounces'],
  s: ['sec', 'second', 'seconds'],
  min: ['mins', 'minute', 'minutes'],
  h: ['hr', 'hrs', 'hour', 'hours'],
  d: ['day', 'days'],
  week: ['weeks', 'wk', 'wks'],
  K: ['kelvin'],
  '°C': ['deg c', 'degc', 'celsius'],
  '°F': ['deg f', 'degf', 'fahrenheit'],
  mTorr: ['micron', 'microns'],
  'm³/h': ['m^3/h', 'm3/hr', 'cbm/h'],
  'kg/m²': ['kg/m^2'],
  'lb/ft²': ['lb/ft^2', 'lbs/ft2', 'psf'],
  'kg/m³': ['kg/m^3'],
  'lb/ft³': ['lb/ft^3', 'lbs/ft3'],
  'W/(m²·K)': ['w/m2k', 'w/m2/k', 'w/m^2k'],
  'W/(m·K)': ['w/mk', 'w/m/k'],
  '1/s': ['/s', 'per second'],
  '1/h': ['/h', 'per hour'],
  '1/year': ['/year', 'per year', 'a year'],
  'h/week': ['h a week', 'hours a week', 'hours/week'],
  'kg/week': ['kg a week', 'kg/wk'],
  'lb/week': ['lb a week', 'lbs/week', 'lb/wk'],
  '%': ['percent', 'per cent'],
  '%/year': ['%', 'percent', '% a year', '% per year', '%/yr', '% pa', '% p.a.'],
  'money/kg': ['/kg', 'per kg', 'a kg'],
  'money/lb': ['/lb', 'per lb', 'a lb', 'a pound', 'per pound'],
  'money/kWh': ['/kwh', 'per kwh'],
  'money/kW': ['/kw', 'per kw'],
  'money/h': ['/h', '/hr', '/hour', 'an hour', 'per hour'],
  'money/month': ['/month', '/mo', 'a month', 'per month'],
  'money/year': ['/year', '/yr', 'a year', 'per year'],
  'money/L': ['/l', 'per l', 'per litre', 'a litre', 'per liter'],
  'money/gal': ['/gal', 'per gal', 'a gallon'],
  month: ['months', 'mo'],
  year: ['years', 'yr', 'yrs'],
  V: ['volt', 'volts'],
  A: ['amp', 'amps'],
  W: ['watt', 'watts'],
};

/** One way to write a unit, in the plain signs that `plainSigns` leaves. */
export interface UnitForm {
  readonly text: string;
  readonly unit: Unit;
}

/** Text with look-alike and raised signs replaced by the ones on a keyboard, so that units and sums compare. */
export function plainSigns(text: string): string {
  return text
    .replace(/[\u2212\u2013]/g, '-')
    .replace(/[×⋅·]/g, '*')
    .replace(/÷/g, '/')
    .replace(/²/g, '2')
    .replace(/³/g, '3')
    .replace(/[°º]/g, '')
    .replace(/\s+/g, ' ')
    .trim();
}

function formsOf(unit: Unit): readonly UnitForm[] {
  // A bare number needs no sign; the symbol 1 would be read as a second number.
  const own = unit.symbol === '' || unit.symbol === '1' ? [] : [unit.symbol];
  const texts = [...own, ...(OTHER_FORMS[unit.symbol] ?? [])].map((text) => plainSigns(text).toLowerCase());
  const spelt = texts.flatMap((text) =>
    text.includes('*') ? [text, text.replaceAll('*', ' '), text.replaceAll('*', '.')] : [text],
  );
  return spelt.map((text) => ({ text, unit }));
}

const FORMS: ReadonlyMap<Dimension, readonly UnitForm[]> = new Map(
  (Object.keys(DIMENSIONS) as Dimension[]).map((dimension) => {
    const units: readonly Unit[] = DIMENSIONS[dimension];
    return [dimension, units.flatMap(formsOf).sort((a, b) => b.text.length - a.text.length)] as const;
  }),
);

const LETTER = /[\p{L}\p{N}_^]/u;

/** The longest unit of a dimension that stands at `offset` of a text in plain signs; undefined when none does. */
export function unitAt(text: string, offset: number, dimension: Dimension): UnitForm | undefined {
  const rest = text.slice(offset).toLowerCase();
  return FORMS.get(dimension)?.find((form) => {
    return (
      rest.startsWith(form.text) && !(LETTER.test(form.text.at(-1) ?? '') && LETTER.test(rest[form.text.length] ?? ' '))
    );
  });
}

/** The longest unit of any dimension that stands at `offset`, to say what a misplaced unit is; undefined when none does. */
export function foreignUnitAt(text: string, offset: number): UnitForm | undefined {
  const found = [...FORMS.keys()].flatMap((dimension) => {
    const form = unitAt(text, offset, dimension);
    return form ? [form] : [];
  });
  return found.sort((a, b) => b.text.length - a.text.length)[0];
}
