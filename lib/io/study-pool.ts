import { type Remote, wrap } from 'comlink';
import { engineCount } from './engine-client.ts';
import { type EngineHandle, JobBoard } from './job-board.ts';
import { PartRuns } from './part-runs.ts';
import type { StudyEngine } from './studies.ts';
import type { StudyApi } from './study.worker.ts';

function spawnStudyEngine(): EngineHandle<Remote<StudyApi>> {
  const worker = new Worker(new URL('./study.worker.ts', import.meta.url), { type: 'module', name: 'study' });
  return { engine: wrap<StudyApi>(worker), stop: () => worker.terminate() };
}

/** Threads that do long work beside the page; they start when the first run is asked for. */
export function studyPool(): PartRuns<StudyEngine> {
  return new PartRuns((report) => new JobBoard<StudyEngine>(engineCount(), spawnStudyEngine, report));
}
