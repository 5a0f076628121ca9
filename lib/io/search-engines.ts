import { type Remote, wrap } from 'comlink';
import { engineCount } from './engine-client.ts';
import { type Board, type EngineHandle, JobBoard, type JobReport } from './job-board.ts';
import type { SearchApi } from './search.worker.ts';
import type { SearchEngine } from './search-desk.ts';

function spawnSearchEngine(): EngineHandle<Remote<SearchApi>> {
  const worker = new Worker(new URL('./search.worker.ts', import.meta.url), { type: 'module', name: 'search' });
  return { engine: wrap<SearchApi>(worker), stop: () => worker.terminate() };
}

/** A board of threads that look for options; they start with the first search. */
export function searchBoard(report: JobReport): Board<SearchEngine> {
  return new JobBoard<SearchEngine>(engineCount(), spawnSearchEngine, report);
}

/** Families handed out at a time: one for each thread and one that waits, so that none stands idle. */
export function familiesAtOnce(): number {
  return engineCount() + 1;
}
