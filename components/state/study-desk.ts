import { useSyncExternalStore } from 'react';
import type { StudyKind } from '../../lib/io/studies.ts';
import { StudyDesk, type StudyState } from '../../lib/io/study-desk.ts';
import { studyPool } from '../../lib/io/study-pool.ts';

let desk: StudyDesk | null = null;

/** The one desk of the page for long work; its threads start with the first study. */
export function getStudyDesk(): StudyDesk {
  desk ??= new StudyDesk(studyPool());
  return desk;
}

/** How far a kind of study has come, and its last answer. */
export function useStudy<Kind extends StudyKind>(kind: Kind): StudyState<Kind> {
  const { subscribe, states } = getStudyDesk();
  return useSyncExternalStore(subscribe, () => states()[kind] as StudyState<Kind>);
}
