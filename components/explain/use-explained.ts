import { useCallback, useState } from 'react';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import { FLAG_COLUMN_ID } from '../../lib/views/sheet-columns.ts';
import type { NamedCell } from '../sheet/named-cell.ts';
import { getPlanner } from '../state/planner.ts';

interface Explained {
  /** The cell whose figure is being explained; null when none is. */
  readonly cell: NamedCell | null;
  readonly canOpen: (cell: NamedCell) => boolean;
  readonly open: (cell: NamedCell) => void;
  readonly close: () => void;
}

const EXPLAINED: ReadonlySet<string> = new Set([FLAG_COLUMN_ID, ...OUTPUTS.map((output) => output.id)]);

function canOpen({ columnId }: NamedCell): boolean {
  return EXPLAINED.has(columnId);
}

/** Which cell's figure is being explained. */
export function useExplained(): Explained {
  const [cell, setCell] = useState<NamedCell | null>(null);
  const open = useCallback((wanted: NamedCell) => {
    if (canOpen(wanted)) setCell(wanted);
    else getPlanner().say('Only figures that are worked out can be taken apart; this cell is not one of them.');
  }, []);
  const close = useCallback(() => setCell(null), []);
  return { cell, canOpen, open, close };
}
