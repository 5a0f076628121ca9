import type { OpenFailure } from '../state/planner-state.ts';
import { NoticeDialog } from '../ui/notice-dialog.tsx';
import styles from './open-failure-dialog.module.css';

interface Props {
  readonly failure: OpenFailure;
  readonly onClose: () => void;
}

/** Why a file was not opened: every finding with its place and what mends it. */
export function OpenFailureDialog({ failure, onClose }: Props) {
  return (
    <NoticeDialog title={`${failure.fileName} was not opened`} onClose={onClose}>
      <p>Your plan is untouched. This is what stands in the way:</p>
      <ul className={styles.list}>
        {failure.lines.map((line) => (
          <li key={`${line.where} ${line.problem}`}>
            {line.where === '' ? null : <code>{line.where}</code>}
            <span>{line.problem}</span>
            <span className={styles.remedy}>{line.remedy}</span>
          </li>
        ))}
      </ul>
    </NoticeDialog>
  );
}
