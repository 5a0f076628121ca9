import { useEffect, useState } from 'react';
import { whenIdle } from '../../lib/io/when-idle.ts';

/** False at first, true from the moment when the page has nothing more urgent to do. */
export function useIdle(): boolean {
  const [isIdle, setIdle] = useState(false);
  useEffect(() => whenIdle(() => setIdle(true)), []);
  return isIdle;
}
