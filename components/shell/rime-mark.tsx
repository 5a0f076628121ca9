import styles from './page-header.module.css';

/** The mark: a needle of rime grown from a line. */
export function RimeMark() {
  return (
    <svg className={styles.mark} width={34} height={34} viewBox="0 0 34 34" aria-hidden="true">
      <path
        d="M3 29h28M17 29V4M17 11l-6-5M17 11l6-5M17 18l-8-6M17 18l8-6M17 25l-9-6.500M17 25l9-6.500"
        fill="none"
        stroke="currentColor"
        strokeWidth={2}
        strokeLinecap="round"
        strokeLinejoin="round"
      />
    </svg>
  );
}
