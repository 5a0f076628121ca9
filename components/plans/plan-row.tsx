import { type ReactNode, useState } from 'react';
import type { PlanCard } from '../../lib/io/plan-storage.ts';
import { whenText } from '../../lib/views/when-text.ts';
import { getPlanner } from '../state/planner.ts';
import styles from './plans-dialog.module.css';

interface Props {
  readonly card: PlanCard;
  readonly isOpen: boolean;
  /** Told when a plan has been opened. */
  readonly onOpened: () => void;
}

/** What a line of the list is being used for. */
type Mode = 'shown' | 'naming' | 'deleting';

function NameForm({ card, onDone }: { readonly card: PlanCard; readonly onDone: () => void }) {
  const [name, setName] = useState(card.name);
  const commit = () => {
    if (name.trim() !== '' && name.trim() !== card.name) void getPlanner().shelf.rename(card.id, name.trim());
    onDone();
  };
  return (
    <form
      className={styles.line}
      onSubmit={(event) => {
        event.preventDefault();
        commit();
      }}
    >
      <input
        className={styles.naming}
        aria-label={`New name of ${card.name}`}
        value={name}
        maxLength={80}
        // biome-ignore lint/a11y/noAutofocus: the button that opened it has just been pressed
        autoFocus
        onChange={(event) => setName(event.target.value)}
      />
      <button type="submit">Rename</button>
      <button type="button" onClick={onDone}>
        Leave it
      </button>
    </form>
  );
}

function DeleteQuestion({ card, onDone }: { readonly card: PlanCard; readonly onDone: () => void }) {
  return (
    <div className={styles.line}>
      <span>
        Delete <strong>{card.name}</strong> for good?
      </span>
      <button type="button" className={styles.danger} onClick={() => void getPlanner().shelf.remove(card.id)}>
        Delete it
      </button>
      <button
        type="button"
        // biome-ignore lint/a11y/noAutofocus: the button that asked has just been pressed, and keeping is the safe answer
        autoFocus
        onClick={onDone}
      >
        Keep it
      </button>
    </div>
  );
}

function Tool({ words, of, onPress, disabled = false }: ToolProps): ReactNode {
  return (
    <button type="button" aria-label={`${words} ${of}`} disabled={disabled} onClick={onPress}>
      {words}
    </button>
  );
}

interface ToolProps {
  readonly words: string;
  readonly of: string;
  readonly onPress: () => void;
  readonly disabled?: boolean;
}

/** One kept plan: a press opens it; beside it what else can be done with it. */
export function PlanRow({ card, isOpen, onOpened }: Props) {
  const [mode, setMode] = useState<Mode>('shown');
  const done = () => setMode('shown');
  const { shelf } = getPlanner();
  if (mode === 'naming') return <NameForm card={card} onDone={done} />;
  if (mode === 'deleting') return <DeleteQuestion card={card} onDone={done} />;
  return (
    <div className={styles.line}>
      <button
        type="button"
        className={styles.open}
        aria-current={isOpen ? 'true' : undefined}
        onClick={() => void shelf.open(card.id).then(onOpened)}
      >
        <span className={styles.name}>{card.name}</span>
        <span className={styles.when}>{isOpen ? 'open here' : whenText(card.touched)}</span>
      </button>
      <Tool words="Rename" of={card.name} onPress={() => setMode('naming')} />
      <Tool words="Duplicate" of={card.name} onPress={() => void shelf.duplicate(card.id)} />
      <Tool words="Delete" of={card.name} disabled={isOpen} onPress={() => setMode('deleting')} />
    </div>
  );
}
