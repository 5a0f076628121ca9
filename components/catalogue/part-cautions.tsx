import type { Caution } from '../../lib/views/cautions.ts';
import styles from './part-cautions.module.css';

/** What to heed before acting on the values of a part. */
export function PartCautions({ cautions }: { readonly cautions: readonly Caution[] }) {
  return (
    <dl className={styles.cautions}>
      {cautions.map(({ about, words }) => (
        <div key={about}>
          <dt>{about}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
}
