import styles from './figure-frame.module.css';

/** Stands where a figure will be while it is being worked out. */
export function FigurePending({ name, words }: { readonly name: string; readonly words: string }) {
  return (
    <div className={styles.figure} data-figure={name} data-pending="true">
      <p className={styles.name}>{name}</p>
      <p className={styles.pending}>{words}</p>
    </div>
  );
}
