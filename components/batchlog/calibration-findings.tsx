import type { CalibrationFinding } from '../../lib/views/batch-log/calibration-findings.ts';
import styles from './calibration-part.module.css';

/** What the fit noticed about the log, with what would mend it. */
export function CalibrationFindings({ findings }: { readonly findings: readonly CalibrationFinding[] }) {
  if (findings.length === 0) return null;
  return (
    <ul className={styles.findings} aria-label="What the fit noticed">
      {findings.map(({ problem, remedy }) => (
        <li key={problem}>
          {problem} <span className={styles.remedy}>{remedy}</span>
        </li>
      ))}
    </ul>
  );
}
