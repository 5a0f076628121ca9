'use client';

import { type ReactNode, useEffect, useMemo, useRef, useState } from 'react';
import { inTurn, leaveRow } from '../../lib/io/in-turn.ts';
import { type FigureName, slotId } from './figure-list.ts';
import styles from './figure-slot.module.css';

interface Props {
  readonly name: FigureName;
  readonly wide?: boolean;
  readonly children: () => ReactNode;
}

/** How far outside the window a figure begins to be drawn, so that scrolling meets it ready. */
const AHEAD = '400px';

/** What draws the figure, taken up when its turn comes: all at once they would keep the page from answering for a while. */
function useInTurn(draw: () => ReactNode): () => ReactNode {
  const [owner] = useState({});
  const [drawn, setDrawn] = useState(() => draw);
  useEffect(() => inTurn(owner, () => setDrawn(() => draw)), [owner, draw]);
  useEffect(() => () => leaveRow(owner), [owner]);
  return drawn;
}

/** The place of a figure; the figure itself is drawn once the place comes near the window. */
export function FigureSlot({ name, wide = false, children }: Props) {
  const ref = useRef<HTMLDivElement>(null);
  const [isNear, setNear] = useState(false);
  const draw = useInTurn(children);
  const figure = useMemo(() => (isNear ? draw() : <p className={styles.waiting}>{name}</p>), [isNear, draw, name]);
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
    const come = () => setNear(true);
    element.addEventListener('focus', come);
    return () => {
      observer.disconnect();
      element.removeEventListener('focus', come);
    };
  }, [isNear]);
  return (
    <div ref={ref} id={slotId(name)} tabIndex={-1} className={wide ? styles.wide : styles.slot} data-drawn={isNear}>
      {figure}
    </div>
  );
}
