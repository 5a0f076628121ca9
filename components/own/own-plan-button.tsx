import { useState } from 'react';
import { shownAs } from '../../lib/views/entry-columns.ts';
import { presentState } from '../../lib/views/sheet-history.ts';
import { usePlanner } from '../state/use-planner.ts';
import { SignButton } from '../ui/sign-button.tsx';
import { OwnPlanDialog } from './own-plan-dialog.tsx';

/** A button that asks the five questions. @param onMade called when there is a new plan */
export function OwnPlanButton({ onMade }: { readonly onMade: () => void }) {
  const sheet = usePlanner((state) => state.sheet);
  const [isOpen, setOpen] = useState(false);
  const close = () => setOpen(false);
  return (
    <>
      <SignButton sign="plus" label="Start my own" wordy onPress={() => setOpen(true)} />
      {isOpen ? (
        <OwnPlanDialog
          shown={shownAs(presentState(sheet).plan)}
          onClose={close}
          onMade={() => {
            close();
            onMade();
          }}
        />
      ) : null}
    </>
  );
}
