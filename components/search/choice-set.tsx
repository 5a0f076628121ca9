import { useId } from 'react';
import type { TextFault } from '../../lib/views/mix-text.ts';
import styles from './search-panel.module.css';

interface Props {
  readonly label: string;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly chosen: readonly string[];
  readonly fault: TextFault | undefined;
  readonly onChange: (chosen: readonly string[]) => void;
}

/** Things of which any may be taken; they stay in the order of the list. */
export function ChoiceSet({ label, options, chosen, fault, onChange }: Props) {
  const id = useId();
  const toggle = (value: string, isChosen: boolean) => {
    const wanted = new Set(isChosen ? [...chosen, value] : chosen.filter((other) => other !== value));
    onChange(options.map((option) => option.value).filter((option) => wanted.has(option)));
  };
  return (
    <fieldset className={styles.set} aria-describedby={`${id}-fault`}>
      <legend>{label}</legend>
      {options.map(({ value, label: words }) => (
        <label key={value} className={styles.choice}>
          <input
            type="checkbox"
            checked={chosen.includes(value)}
            onChange={(event) => toggle(value, event.target.checked)}
          />
          {words}
        </label>
      ))}
      <span id={`${id}-fault`} className={styles.fault}>
        {fault ? `${fault.problem} ${fault.remedy}` : ''}
      </span>
    </fieldset>
  );
}
