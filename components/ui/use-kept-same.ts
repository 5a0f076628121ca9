import { useState } from 'react';
import { keepSame } from '../../lib/views/keep-same.ts';

/** A list whose items stay the same objects for as long as they are the same, from one drawing to the next. */
export function useKeptSame<Item>(list: readonly Item[], isSame: (a: Item, b: Item) => boolean): readonly Item[] {
  // Only a memory: whatever it holds, the outcome has the same content.
  const [memory] = useState<{ list: readonly Item[] }>(() => ({ list: [] }));
  memory.list = keepSame(memory.list, list, isSame);
  return memory.list;
}
