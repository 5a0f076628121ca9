import { useState } from 'react';
import { ownPlan } from '../../lib/plan/own/own-plan.ts';
import type { ShownAs } from '../../lib/views/format-quantity.ts';
import { OWN_START, type OwnFaults, type OwnForm, readOwnForm } from '../../lib/views/own-form.ts';
import { getPlanner } from '../state/planner.ts';
import { NoticeDialog } from '../ui/notice-dialog.tsx';
import styles from './own-plan-dialog.module.css';
import { OwnPlanForm } from './own-plan-form.tsx';

interface Props {
  readonly shown: ShownAs;
  readonly onClose: () => void;
  readonly onMade: () => void;
}

const SAID = 'This is your plan. What you did not tell is a guess and marked as one: put your own figures there.';

/** Five questions that make a plan of one's own. */
export function OwnPlanDialog({ shown, onClose, onMade }: Props) {
  const [form, setForm] = useState<OwnForm>(OWN_START);
  const [isTried, setTried] = useState(false);
  const answers = readOwnForm(form, shown);
  const faults: OwnFaults = isTried && !answers.ok ? answers.error : {};
  const make = () => {
    setTried(true);
    if (!answers.ok) return;
    void getPlanner().openNew(ownPlan(answers.value), SAID);
    onMade();
  };
  return (
    <NoticeDialog
      title="Start my own plan"
      onClose={onClose}
      closeLabel="Not now"
      actions={
        <button type="button" className={styles.make} onClick={make}>
          Make my plan
        </button>
      }
    >
      <p>Five questions; rough answers will do. Figures take sums and units, such as 4*3 or 60 kg/week.</p>
      <OwnPlanForm form={form} faults={faults} shown={shown} onChange={setForm} />
      <p className={styles.fault} role="status">
        {isTried && !answers.ok ? 'Some answers are missing or cannot be read: they are marked.' : ''}
      </p>
    </NoticeDialog>
  );
}
