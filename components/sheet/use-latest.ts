import { type RefObject, useLayoutEffect, useRef } from 'react';

/** A place that always holds the latest value, for handlers that must not change when it does. */
export function useLatest<Value>(value: Value): RefObject<Value> {
  const ref = useRef(value);
  useLayoutEffect(() => {
    ref.current = value;
  }, [value]);
  return ref;
}
