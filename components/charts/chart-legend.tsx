import styles from './chart-legend.module.css';
import { BAND_OPACITY } from './chart-look.ts';

export interface LegendItem {
  readonly key: string;
  readonly label: string;
  /** CSS colour. */
  readonly colour: string;
  readonly mark: 'line' | 'dashed' | 'block' | 'band';
  /** Said more softly after the label. */
  readonly aside?: string;
  readonly isCurrent?: boolean;
}

function Swatch({ colour, mark }: Pick<LegendItem, 'colour' | 'mark'>) {
  return (
    <svg width={20} height={12} aria-hidden="true">
      {mark === 'block' || mark === 'band' ? (
        <rect width={20} height={12} rx={2} fill={colour} fillOpacity={mark === 'band' ? BAND_OPACITY : 1} />
      ) : (
        <line
          x1={0}
          x2={20}
          y1={6}
          y2={6}
          stroke={colour}
          strokeWidth={4}
          strokeDasharray={mark === 'dashed' ? '6 3' : undefined}
        />
      )}
    </svg>
  );
}

/** What the marks of a chart stand for; it goes into a saved picture too. */
export function ChartLegend({ items }: { readonly items: readonly LegendItem[] }) {
  return (
    <ul className={styles.legend} data-legend>
      {items.map((item) => (
        <li key={item.key} data-current={item.isCurrent ?? false}>
          <Swatch colour={item.colour} mark={item.mark} />
          <span>
            {item.label}
            {item.aside ? <span className={styles.aside}> {item.aside}</span> : null}
          </span>
        </li>
      ))}
    </ul>
  );
}
