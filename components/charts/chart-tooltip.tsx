import styles from './chart-tooltip.module.css';

export interface TooltipLine {
  readonly key: string;
  readonly name: string;
  readonly value: string;
  /** CSS colour of the swatch. */
  readonly colour: string;
}

interface Props {
  readonly heading: string;
  readonly lines: readonly TooltipLine[];
}

/** The little card that shows the figures under the pointer. */
export function ChartTooltip({ heading, lines }: Props) {
  return (
    <div className={styles.card}>
      <p className={styles.heading}>{heading}</p>
      <ul className={styles.lines}>
        {lines.map((line) => (
          <li key={line.key}>
            <span className={styles.swatch} style={{ background: line.colour }} />
            <span>{line.name}</span>
            <span className={styles.value}>{line.value}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}
