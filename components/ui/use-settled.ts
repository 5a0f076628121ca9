import { startTransition, useEffect, useRef, useState } from 'react';

/** How long a value must stay the same before it is taken up, and the longest that it is waited for while it goes on changing [ms]. */
const REST = 150;
const MOST = 600;

/** A value as it was when it last stood still: for what is heavy to draw, so that moving about and typing never wait for it. */
export function useSettled<Value>(value: Value): Value {
  const [settled, setSettled] = useState(value);
  const since = useRef<number | null>(null);
  useEffect(() => {
    if (value === settled) {
      since.current = null;
      return undefined;
    }
    since.current ??= performance.now();
    const left = since.current + MOST - performance.now();
    const timer = setTimeout(() => startTransition(() => setSettled(value)), Math.max(0, Math.min(REST, left)));
    return () => clearTimeout(timer);
  }, [value, settled]);
  return settled;
}
