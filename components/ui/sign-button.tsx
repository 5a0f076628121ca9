import { Sign, type SignName } from './sign.tsx';
import styles from './sign-button.module.css';

interface Props {
  readonly sign: SignName;
  readonly label: string;
  readonly onPress: () => void;
  readonly disabled?: boolean;
  /** Show the label beside the sign, not only to screen readers; `roomy`: only where the screen is wide enough. */
  readonly wordy?: boolean | 'roomy';
  /** Keys that do the same, such as "Control+Z". */
  readonly keys?: string;
}

/** A button with a sign, and its words beside it or in its tip. */
export function SignButton({ sign, label, onPress, disabled = false, wordy = false, keys }: Props) {
  return (
    <button
      type="button"
      className={wordy ? styles.wordy : styles.bare}
      data-roomy={wordy === 'roomy' || undefined}
      aria-label={wordy ? undefined : label}
      aria-keyshortcuts={keys}
      title={keys ? `${label} (${keys.replace('Control', 'Ctrl')})` : label}
      disabled={disabled}
      onClick={onPress}
    >
      <Sign name={sign} />
      {wordy ? <span>{label}</span> : null}
    </button>
  );
}
