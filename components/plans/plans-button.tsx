import { useState } from 'react';
import { SignButton } from '../ui/sign-button.tsx';
import { PlansDialog } from './plans-dialog.tsx';

/** A button that shows the plans kept in this browser. */
export function PlansButton() {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <SignButton sign="plans" label="Plans" wordy="roomy" onPress={() => setOpen(true)} />
      {isOpen ? <PlansDialog onClose={() => setOpen(false)} /> : null}
    </>
  );
}
