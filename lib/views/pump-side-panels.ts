import { formatFixed, formatPercent, NONE } from './format-number.ts';
import { quantityWithUnit, type ShownAs } from './format-quantity.ts';
import { betterOf, EQUAL, SIDE_LINES, type Side, type SideLine } from './pump-side-lines.ts';

/** A pair of figures that the picture shows as two bars. */
export interface SidePanel {
  readonly title: string;
  /** In the engine's unit; null where there is none. */
  readonly own: number | null;
  readonly shared: number | null;
  readonly ownText: string;
  readonly sharedText: string;
  readonly better: 'own' | 'shared' | null;
  /** The shared pump against a pump each, in words. */
  readonly words: string;
}

/** From this many times as much on, a percentage says less than the factor. */
const MANY_TIMES = 2;

function againstOwn(own: number | null, shared: number | null): string {
  if (own === null || shared === null) return '';
  if (own === shared) return 'as much';
  // A share of nothing, or of a loss, says nothing.
  if (own <= 0 || shared < 0) return shared > own ? 'more' : 'less';
  const ratio = shared / own;
  if (Math.abs(ratio - 1) <= EQUAL) return 'as good as equal';
  if (ratio >= MANY_TIMES) return `${formatFixed(ratio, 1)} times as much`;
  return ratio > 1 ? `${formatPercent(ratio - 1)} more` : `${formatPercent(1 - ratio)} less`;
}

function panelOf(line: SideLine & { readonly panel: string }, own: Side, shared: Side, shown: ShownAs): SidePanel {
  const [a, b] = [line.read(own), line.read(shared)];
  const text = (value: number | null) => (value === null ? NONE : quantityWithUnit(value, line.dimension, shown));
  const words = againstOwn(a, b);
  return {
    title: line.panel,
    own: a,
    shared: b,
    ownText: text(a),
    sharedText: text(b),
    better: betterOf(a, b, line.wish),
    words: words === '' ? '' : `shared: ${words}`,
  };
}

/** The pairs of the picture: what it costs, what it makes, what failing pumps do, oil and power. */
export function sidePanels(own: Side, shared: Side, shown: ShownAs): readonly SidePanel[] {
  return SIDE_LINES.flatMap((line) =>
    line.panel ? [panelOf({ ...line, panel: line.panel }, own, shared, shown)] : [],
  );
}
