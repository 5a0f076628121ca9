import { type KeyboardEvent, useId, useState } from 'react';
import { ORIGINS } from '../../lib/inputs/quantity.ts';
import { ORIGIN_LABELS, type QuantityDetails } from '../../lib/views/fields/field-details.ts';
import { editPart, type QuantityPart } from '../../lib/views/fields/quantity-part.ts';
import { getPlanner } from '../state/planner.ts';
import { ChoiceBar } from '../ui/choice-bar.tsx';
import styles from './details-card.module.css';

interface PartProps {
  readonly part: QuantityPart;
  readonly label: string;
  readonly value: string;
  readonly place: string;
  readonly isLong?: boolean;
}

const ORIGIN_OPTIONS = ORIGINS.map((value) => ({ value, label: ORIGIN_LABELS[value] }));

/** One text beside the value. A text that cannot be read stays, marked; the status line says what is wrong with it. */
function PartField({ part, label, value, place, isLong = false }: PartProps) {
  const id = useId();
  const [isWrong, setWrong] = useState(false);
  const take = (text: string) => {
    if (text === value) setWrong(false);
    else setWrong(!getPlanner().perform(editPart(place, part, text)));
  };
  const shared = {
    id,
    className: styles.part,
    defaultValue: value,
    'aria-invalid': isWrong || undefined,
    autoComplete: 'off',
    onBlur: (event: { readonly target: { readonly value: string } }) => take(event.target.value),
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === 'Enter') take(event.currentTarget.value);
    if (event.key === 'Escape') {
      event.currentTarget.value = value;
      setWrong(false);
    }
  };
  return (
    <div className={isLong ? styles.longPart : styles.shortPart}>
      <label htmlFor={id}>{label}</label>
      {/* A value that has changed elsewhere, by undo for one, is shown afresh. */}
      {isLong ? <textarea key={value} {...shared} rows={2} /> : <input key={value} {...shared} onKeyDown={onKeyDown} />}
    </div>
  );
}

interface Props {
  readonly quantity: QuantityDetails;
  readonly place: string;
}

/** What stands beside the value of a quantity, each to be changed in place. */
export function QuantityParts({ quantity, place }: Props) {
  const { origin, unit, low, high, source, reference, note } = quantity;
  const inUnit = unit === '' ? '' : ` (${unit})`;
  return (
    <div className={styles.parts}>
      <div className={styles.originPart}>
        <span aria-hidden="true">Where it comes from</span>
        <ChoiceBar
          label="Where it comes from"
          options={ORIGIN_OPTIONS}
          value={origin}
          onChange={(value) => getPlanner().perform(editPart(place, 'origin', value))}
        />
      </div>
      <PartField part="low" label={`Low${inUnit}`} value={low} place={place} />
      <PartField part="high" label={`High${inUnit}`} value={high} place={place} />
      <PartField part="source" label="Source" value={source} place={place} />
      {reference === '' ? null : <p className={styles.reference}>{reference}</p>}
      <PartField part="note" label="Note" value={note} place={place} isLong />
    </div>
  );
}
