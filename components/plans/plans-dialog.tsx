import { useEffect } from 'react';
import { getPlanner } from '../state/planner.ts';
import { usePlanner } from '../state/use-planner.ts';
import { NoticeDialog } from '../ui/notice-dialog.tsx';
import { PlanRow } from './plan-row.tsx';
import styles from './plans-dialog.module.css';

/** The plans kept in this browser. */
export function PlansDialog({ onClose }: { readonly onClose: () => void }) {
  const cards = usePlanner((state) => state.cards);
  const planId = usePlanner((state) => state.planId);
  const planner = getPlanner();
  useEffect(() => void planner.shelf.list(), [planner]);
  const startDemo = () => {
    planner.restart();
    onClose();
  };
  return (
    <NoticeDialog
      title="Your plans"
      onClose={onClose}
      actions={
        <button type="button" onClick={startDemo}>
          New from the invented shop
        </button>
      }
    >
      <p>They are kept in this browser and nowhere else. Save a plan as a file to have it elsewhere too.</p>
      {cards.length === 0 ? <p className={styles.when}>None yet: a plan is kept with its first change.</p> : null}
      <ul className={styles.list}>
        {cards.map((card) => (
          <li key={card.id}>
            <PlanRow card={card} isOpen={card.id === planId} onOpened={onClose} />
          </li>
        ))}
      </ul>
    </NoticeDialog>
  );
}
