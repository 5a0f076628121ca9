import type { FieldDetails } from '../../lib/views/fields/field-details.ts';
import type { EntryPreview } from '../../lib/views/preview-entry.ts';
import styles from './details-card.module.css';
import { QuantityParts } from './quantity-parts.tsx';

interface Props {
  readonly details: FieldDetails | null;
  readonly place: string;
  /** What is understood of the text being typed; null when nothing is typed. */
  readonly preview: EntryPreview | null;
}

const HINT =
  'Choose a cell to read what it means. Type over it, or press Enter to go on from what is there. Entries take sums and units, such as 3*4500+200, 7 cfm or 2.5 h.';

function Fault({ details, preview }: Omit<Props, 'place'>) {
  if (preview) return <p className={preview.isGood ? styles.understood : styles.fault}>{preview.words}</p>;
  const fault = details?.fault;
  return (
    <p className={styles.fault} aria-live="polite">
      {fault ? `${fault.problem} ${fault.remedy}` : ''}
    </p>
  );
}

/** All there is to know of the chosen field, and what stands beside its value: origin, low and high, source, note. */
export function DetailsCard({ details, place, preview }: Props) {
  if (!details)
    return (
      <aside className={styles.card} aria-label="About the cell" data-empty>
        <p className={styles.meaning}>{HINT}</p>
      </aside>
    );
  const { owner, label, value, meaning, ask, range, choices, quantity } = details;
  return (
    <aside className={styles.card} aria-label="About the cell">
      <p className={styles.owner}>{owner}</p>
      <h2>
        {label}
        {value === '' ? null : <span className={styles.value}> {value}</span>}
      </h2>
      <Fault details={details} preview={preview} />
      <p className={styles.meaning}>
        {meaning} {range}
      </p>
      {ask === '' ? null : <p className={styles.ask}>{ask}</p>}
      {choices.length === 0 ? null : (
        <dl className={styles.choices}>
          {choices.map((choice) => (
            <div key={choice.label}>
              <dt>{choice.label}</dt>
              <dd>{choice.meaning}</dd>
            </div>
          ))}
        </dl>
      )}
      {quantity ? <QuantityParts key={place} quantity={quantity} place={place} /> : null}
    </aside>
  );
}
