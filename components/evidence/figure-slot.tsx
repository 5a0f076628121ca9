'use client';

import { type ReactNode, useEffect, useRef, useState } from 'react';
import { type FigureName, slotId } from './figure-list.ts';
import styles from './figure-slot.module.css';

interface Props {
  readonly name: FigureName;
  readonly wide?: boolean;
  readonly children: () => ReactNode;
}

/** How far outside the window a figure begins to be drawn, so that scrolling meets it ready. */
const AHEAD = '400px';

/** The place of a figure; the figure itself is drawn once the place comes near the window. */
export function FigureSlot({ name, wide = false, children }: Props) {
  const ref = useRef<HTMLDivElement>(null);
  const [isNear, setNear] = useState(false);
  useEffect(() => {
    const element = ref.current;
    if (!element || isNear) return;
    const observer = new IntersectionObserver(
      (entries) => {
        if (entries.some((entry) => entry.isIntersecting)) setNear(true);
      },
      { rootMargin: AHEAD },
    );
    observer.observe(element);
    // One that is gone to from the index has the focus before the page has settled.
    const draw = () => setNear(true);
    element.addEventListener('focus', draw);
    return () => {
      observer.disconnect();
      element.removeEventListener('focus', draw);
    };
  }, [isNear]);
  return (
    <div ref={ref} id={slotId(name)} tabIndex={-1} className={wide ? styles.wide : styles.slot} data-drawn={isNear}>
      {isNear ? children() : <p className={styles.waiting}>{name}</p>}
    </div>
  );
}
