import { useState } from 'react';
import styles from './sheet-menu.module.css';

interface Props {
  readonly label: string;
  readonly filter: string;
  readonly onFilter: (filter: string) => void;
}

/** Asks which rows of a column are to be seen. */
export function FilterForm({ label, filter, onFilter }: Props) {
  const [text, setText] = useState(filter);
  return (
    <form
      className={styles.filter}
      onSubmit={(event) => {
        event.preventDefault();
        onFilter(text);
      }}
    >
      <input
        aria-label={`Show only rows where ${label} is`}
        placeholder="words, >5 or 2..8"
        value={text}
        autoComplete="off"
        onChange={(event) => setText(event.target.value)}
      />
      <button type="submit">Filter</button>
    </form>
  );
}
