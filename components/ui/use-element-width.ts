import { type RefObject, useEffect, useRef, useState } from 'react';

/** Width of an element [px], followed as it changes; 0 until it has been measured. */
export function useElementWidth<Kind extends HTMLElement>(): readonly [RefObject<Kind | null>, number] {
  const ref = useRef<Kind>(null);
  const [width, setWidth] = useState(0);
  useEffect(() => {
    const element = ref.current;
    if (!element) return;
    const observer = new ResizeObserver((entries) => setWidth(Math.floor(entries[0]?.contentRect.width ?? 0)));
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, width];
}
