/** Shown for a figure that does not exist, such as the payback of a scenario that never pays back. */
export const NONE = '—';

const formatters = new Map<number, Intl.NumberFormat>();

function formatterFor(digits: number): Intl.NumberFormat {
  const known = formatters.get(digits);
  if (known) return known;
  const options = { minimumFractionDigits: digits, maximumFractionDigits: digits };
  const made = new Intl.NumberFormat('en-US', options);
  formatters.set(digits, made);
  return made;
}

/** A number with a fixed count of decimals, thousands marked, and a true minus sign; never "−0". */
export function formatFixed(value: number, digits: number): string {
  const text = formatterFor(digits).format(Math.abs(value));
  const isZero = !/[1-9]/.test(text);
  return value < 0 && !isZero ? `−${text}` : text;
}

/** Decimals that leave about three digits that mean something: 0.0123, 1.23, 12.3, 123, 12,345. */
export function sensibleDigits(value: number): number {
  const size = Math.abs(value);
  if (size === 0 || size >= 99.95) return 0;
  if (size >= 9.995) return 1;
  return Math.min(8, 2 - Math.floor(Math.log10(size) + 1e-12));
}

/** A number with about three digits that mean something. */
export function formatSensible(value: number): string {
  return formatFixed(value, sensibleDigits(value));
}

const RAISED = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'] as const;

/** A number in powers of ten as it is written by hand: "2e-8" as "2 × 10⁻⁸". @param exponential as `toExponential` gives it */
export function powerText(exponential: string): string {
  const [factor = '', power = ''] = exponential.split('e');
  const raised = [...power].map((sign) => (sign === '-' ? '⁻' : (RAISED[Number(sign)] ?? ''))).join('');
  return `${factor.replace('-', '−')} × 10${raised}`;
}

/** A number with three digits, a tiny one by its power of ten: 1.23, 0.0123, 1.23 × 10⁻⁵. */
export function formatTiny(value: number): string {
  if (value === 0 || Math.abs(value) >= 1e-3) return formatSensible(value);
  return powerText(value.toExponential(2));
}

/** A share 0–1 as whole percent, with one decimal below ten: "61 %", "4.2 %". */
export function formatPercent(share: number): string {
  const percent = share * 100;
  const digits = Math.abs(percent) < 9.95 && Math.abs(percent) > 0 ? 1 : 0;
  return `${formatFixed(percent, digits)} %`;
}

const ORDINAL_ENDINGS: Readonly<Record<string, string>> = { one: 'st', two: 'nd', few: 'rd', other: 'th' };
const ordinalRules = new Intl.PluralRules('en-US', { type: 'ordinal' });

/** "1st", "2nd", "3rd", "4th", "11th". */
export function formatOrdinal(value: number): string {
  return `${value}${ORDINAL_ENDINGS[ordinalRules.select(value)]}`;
}

/** "1 chamber", "3 chambers". */
export function countOf(count: number, noun: string, plural = `${noun}s`): string {
  return `${formatFixed(count, 0)} ${count === 1 ? noun : plural}`;
}
