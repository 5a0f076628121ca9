import type { KneeMapLine, KneeMapView, KneeTone } from '../../lib/views/knee-map-view.ts';
import styles from './knee-map-chart.module.css';

interface Props {
  readonly view: KneeMapView;
  /** Width there is [px]. */
  readonly width: number;
  readonly title: string;
  readonly description: string;
}

const LEFT = 84;
const ROW = 32;
const BOTTOM = 44;
/** Fields wider than this tell no more. */
const WIDEST = 64;

const TONES: Readonly<Record<KneeTone, string | undefined>> = {
  pays: styles.pays,
  less: styles.less,
  jams: styles.jams,
  none: styles.none,
};

function Line({ line, y, field }: { readonly line: KneeMapLine; readonly y: number; readonly field: number }) {
  return (
    <g>
      <text className={styles.label} x={LEFT - 8} y={y + ROW / 2} dominantBaseline="central" textAnchor="end">
        {line.label}
      </text>
      {line.marks.map((mark, k) => (
        <g key={mark.chambers}>
          <rect
            className={TONES[mark.tone]}
            x={LEFT + k * field + 1}
            y={y + 1}
            width={field - 2}
            height={ROW - 2}
            rx={3}
            data-here={mark.isHere}
          >
            <title>{`${line.label}, ${mark.chambers} on it: ${mark.words}`}</title>
          </rect>
          <text
            className={mark.isHere ? styles.here : styles.figure}
            x={LEFT + (k + 0.5) * field}
            y={y + ROW / 2}
            dominantBaseline="central"
            textAnchor="middle"
          >
            {mark.text}
          </text>
        </g>
      ))}
    </g>
  );
}

/** A map: pump speed upward, chambers to the right; every field says what its last chamber adds. */
export function KneeMapChart({ view, width, title, description }: Props) {
  const columns = view.lines[0]?.marks.length ?? 1;
  const field = Math.min(WIDEST, (width - LEFT) / columns);
  const height = view.lines.length * ROW + BOTTOM;
  return (
    <svg
      className={styles.picture}
      width={LEFT + columns * field}
      height={height}
      role="img"
      aria-label={`${title}. ${description}`}
    >
      {view.lines.map((line, k) => (
        <Line key={line.label} line={line} y={k * ROW} field={field} />
      ))}
      {view.lines[0]?.marks.map((mark, k) => (
        <text
          key={mark.chambers}
          className={styles.label}
          x={LEFT + (k + 0.5) * field}
          y={height - BOTTOM + 14}
          textAnchor="middle"
        >
          {mark.chambers}
        </text>
      ))}
      <text className={styles.label} x={LEFT + (columns * field) / 2} y={height - 8} textAnchor="middle">
        chambers on one pump
      </text>
    </svg>
  );
}
