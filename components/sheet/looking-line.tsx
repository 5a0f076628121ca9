import { lookingWords } from '../../lib/views/looking-words.ts';
import type { SheetColumn } from '../../lib/views/sheet-columns.ts';
import { withAllRows } from '../../lib/views/sheet-look.ts';
import { getPlanner } from '../state/planner.ts';
import { usePlanner } from '../state/use-planner.ts';
import styles from './sheet-toolbar.module.css';

interface Props {
  readonly columns: readonly SheetColumn[];
  readonly shown: number;
  readonly all: number;
}

/** Says which rows are to be seen when not all are, or not in the order of the plan, and brings all back. */
export function LookingLine({ columns, shown, all }: Props) {
  const look = usePlanner((state) => state.look);
  const words = lookingWords(look, columns, shown, all);
  if (words === '') return null;
  return (
    <p className={styles.looking}>
      {words}{' '}
      <button type="button" onClick={() => getPlanner().setLook(withAllRows(look))}>
        Show all as in the plan
      </button>
    </p>
  );
}
