import { useCallback, useLayoutEffect, useMemo, useRef } from 'react';
import type { SheetLine } from './sheet-line.ts';
import { useLatest } from './use-latest.ts';
import type { GridRef } from './use-sheet-range.ts';

interface GridLines {
  /** The lines that the grid is given as a whole; the same list until lines come, go or change places. */
  readonly given: SheetLine[];
  /** To be called when the grid stands, as lines may have changed since it was given them. */
  readonly onStanding: () => void;
}

function byId(lines: readonly SheetLine[]): Map<string, SheetLine> {
  return new Map(lines.map((line) => [line.id, line]));
}

/**
 * Hands the grid its lines. As long as they are the same ones in the same order, each that has changed is handed over by itself before the
 * page is drawn; a new list would make the grid go through all of them, and draw them only after the page.
 */
export function useGridLines(grid: GridRef, lines: readonly SheetLine[]): GridLines {
  const order = lines.map((line) => line.id).join();
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new list only for another order
  const given = useMemo(() => [...lines], [order]);
  const drawn = useRef<{ readonly given: SheetLine[]; readonly lines: Map<string, SheetLine> } | null>(null);
  const handOver = useCallback(() => {
    if (drawn.current?.given !== given) drawn.current = { given, lines: byId(given) };
    const known = drawn.current.lines;
    for (const line of lines) {
      if (known.get(line.id) === line) continue;
      const node = grid.current?.getRowNode(line.id);
      if (!node) continue;
      node.updateData(line);
      known.set(line.id, line);
    }
  }, [grid, given, lines]);
  useLayoutEffect(handOver, [handOver]);
  const latest = useLatest(handOver);
  const onStanding = useCallback(() => latest.current(), [latest]);
  return { given, onStanding };
}
