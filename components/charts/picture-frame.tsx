import type { ReactNode } from 'react';
import styles from './picture-frame.module.css';

interface Props {
  readonly size: { readonly width: number; readonly height: number };
  /** What the picture says, for who does not see it. */
  readonly words: string;
  readonly children: ReactNode;
}

/** A picture whose places have been worked out beforehand, in its own pixels. */
export function PictureFrame({ size: { width, height }, words, children }: Props) {
  return (
    <svg
      className={styles.picture}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={words}
    >
      {children}
    </svg>
  );
}
