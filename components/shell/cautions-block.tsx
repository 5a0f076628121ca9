import { memo } from 'react';
import { CAUTIONS } from '../../lib/views/cautions.ts';
import type { ScenarioRow } from '../../lib/views/scenario-rows.ts';
import styles from './cautions-block.module.css';

/** What to know before relying on the figures: what this plan's rows warn of, and what holds for any plan. */
export const CautionsBlock = memo(function CautionsBlock({ rows }: { readonly rows: readonly ScenarioRow[] }) {
  const warned = rows.filter((row) => row.messages.length > 0);
  return (
    <section className={styles.block} aria-labelledby="cautions-title">
      <h2 id="cautions-title">Before you rely on this</h2>
      {warned.length === 0 ? null : (
        <dl className={styles.warnings}>
          {warned.map((row) => (
            <div key={row.id}>
              <dt>{row.name}</dt>
              {row.messages.map((message) => (
                <dd key={message.problem} data-severity={message.severity}>
                  {message.problem} <span className={styles.remedy}>{message.remedy}</span>
                </dd>
              ))}
            </div>
          ))}
        </dl>
      )}
      <dl className={styles.cautions}>
        {CAUTIONS.map((caution) => (
          <div key={caution.about}>
            <dt>{caution.about}</dt>
            <dd>{caution.words}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
});
