import { useEffect, useRef, useState } from 'react';
import type { PlanLinkFault } from '../../lib/plan/plan-link-fault.ts';
import type { Result } from '../../lib/result.ts';
import { countOf } from '../../lib/views/format-number.ts';
import { linkWords } from '../../lib/views/link-words.ts';
import { getPlanner } from '../state/planner.ts';
import { NoticeDialog } from '../ui/notice-dialog.tsx';
import { SignButton } from '../ui/sign-button.tsx';
import styles from './share-button.module.css';

function LinkText({ address }: { readonly address: string }) {
  const field = useRef<HTMLTextAreaElement>(null);
  const [said, setSaid] = useState('');
  const copy = async () => {
    field.current?.select();
    try {
      await navigator.clipboard.writeText(address);
      setSaid('Copied.');
    } catch {
      setSaid('The browser does not copy it; it is selected, so Ctrl+C does.');
    }
  };
  return (
    <>
      <textarea ref={field} className={styles.link} aria-label="Link with the plan" readOnly rows={5} value={address} />
      <div className={styles.line}>
        <button type="button" onClick={() => void copy()}>
          Copy the link
        </button>
        <span aria-live="polite">{said === '' ? countOf(address.length, 'character') : said}</span>
      </div>
    </>
  );
}

function ShareDialog({ onClose }: { readonly onClose: () => void }) {
  const [made, setMade] = useState<Result<string, PlanLinkFault> | null>(null);
  useEffect(() => void getPlanner().shareAddress().then(setMade), []);
  return (
    <NoticeDialog title="A link with the whole plan" onClose={onClose}>
      <p>
        The link itself holds the plan, as it is now. Opening it sends the plan to no server. Whoever has the link can
        read all of it, prices and batch log included.
      </p>
      {made?.ok ? <LinkText address={made.value} /> : null}
      {made && !made.ok
        ? linkWords(made.error).map((line) => (
            <p key={line.problem} className={styles.fault}>
              {line.problem} {line.remedy}
            </p>
          ))
        : null}
    </NoticeDialog>
  );
}

/** A button that makes a link which carries the plan. */
export function ShareButton() {
  const [isOpen, setOpen] = useState(false);
  return (
    <>
      <SignButton sign="link" label="Share" wordy="roomy" onPress={() => setOpen(true)} />
      {isOpen ? <ShareDialog onClose={() => setOpen(false)} /> : null}
    </>
  );
}
