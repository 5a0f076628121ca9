import styles from './week-chart.module.css';

/** Hatchings for time that is lost, so that waiting is told from work without colour. */
export function WeekHatches() {
  return (
    <defs>
      <pattern id="hatch-people" width={5} height={5} patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect className={styles.hatchGround} width={5} height={5} />
        <line className={styles.hatchPeople} x1={0} x2={0} y1={0} y2={5} />
      </pattern>
      <pattern id="hatch-pump" width={4} height={4} patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <rect className={styles.hatchGround} width={4} height={4} />
        <line className={styles.hatchPump} x1={0} x2={0} y1={0} y2={4} />
      </pattern>
      <pattern id="hatch-freezer" width={4} height={4} patternUnits="userSpaceOnUse" patternTransform="rotate(-45)">
        <rect className={styles.hatchGround} width={4} height={4} />
        <line className={styles.hatchFreezer} x1={0} x2={0} y1={0} y2={4} />
      </pattern>
    </defs>
  );
}
