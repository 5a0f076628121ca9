/** Which sign stands before the decimals of a table's figures; `unclear` when nothing in it tells. */
export type DecimalStyle = 'point' | 'comma' | 'unclear';

const CLEARLY_COMMA =
  /^\D*(?:0,\d+|\d+,\d{1,2}|\d+,\d{4,}|\d{1,3}(?:\.\d{3})+,\d+|\d{1,3}(?:\.\d{3}){2,}|\d{4,},\d+)(?!\d|[.,]\d)/;
const CLEARLY_POINT =
  /^\D*(?:0?\.\d+|\d+\.\d{1,2}|\d+\.\d{4,}|\d{1,3}(?:,\d{3})+\.\d+|\d{1,3}(?:,\d{3}){2,}|\d{4,}\.\d+)(?!\d|[.,]\d)/;
/** One comma before three digits: thousands here, thousandths there. */
const TWO_WAY = /^\D*[1-9]\d{0,2},\d{3}(?!\d|[.,]\d)/;

/** Which decimal sign the figures of a table use, judged by all of them together; a table of both kinds is unclear. */
export function decimalStyle(figures: readonly string[]): DecimalStyle {
  const comma = figures.some((figure) => CLEARLY_COMMA.test(figure));
  const point = figures.some((figure) => CLEARLY_POINT.test(figure));
  if (comma === point) return 'unclear';
  return comma ? 'comma' : 'point';
}

/** The figure with a decimal point, or null when it can be read in two ways and nothing tells which is meant. */
export function withPoint(figure: string, style: DecimalStyle): string | null {
  if (style === 'point') return figure;
  if (style === 'comma') return figure.replace(/\.(?=\d{3}(?:\D|$))/g, '').replace(/(\d),(?=\d)/g, '$1.');
  if (TWO_WAY.test(figure)) return null;
  return CLEARLY_COMMA.test(figure) ? withPoint(figure, 'comma') : figure;
}
