import type { Study } from '../../lib/io/studies.ts';
import type { StudyState } from '../../lib/io/study-desk.ts';
import { getStudyDesk } from '../state/study-desk.ts';
import { StudyBar } from './study-bar.tsx';

interface Props {
  readonly state: StudyState<'spread'>;
  readonly study: Study<'spread'>;
  readonly label: string;
}

/** Begins the draws of uncertain inputs, for the figure of their spread and for the band around payback. */
export function SpreadStudyBar({ state, study, label }: Props) {
  return (
    <StudyBar
      kind="spread"
      state={state}
      wantedKey={study.key}
      label={label}
      onStart={() => getStudyDesk().start(study)}
    />
  );
}
