import { useId } from 'react';
import styles from './choice-bar.module.css';

interface Option<Value extends string> {
  readonly value: Value;
  readonly label: string;
}

interface Props<Value extends string> {
  readonly label: string;
  readonly options: readonly Option<Value>[];
  readonly value: Value;
  readonly onChange: (value: Value) => void;
}

/** A few choices side by side, one of them taken. */
export function ChoiceBar<Value extends string>({ label, options, value, onChange }: Props<Value>) {
  const name = useId();
  return (
    <fieldset className={styles.bar}>
      <legend className="visually-hidden">{label}</legend>
      {options.map((option) => (
        <label key={option.value} className={styles.choice}>
          <input
            type="radio"
            name={name}
            value={option.value}
            checked={option.value === value}
            onChange={() => onChange(option.value)}
          />
          <span>{option.label}</span>
        </label>
      ))}
    </fieldset>
  );
}
