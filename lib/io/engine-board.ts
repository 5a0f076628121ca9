import { engineCount, spawnEngine } from './engine-client.ts';
import type { DeskEngine } from './engine-desk.ts';
import { type Board, JobBoard, type JobReport } from './job-board.ts';

/** A board of engines, each in a thread of its own. */
export function engineBoard(report: JobReport): Board<DeskEngine> {
  return new JobBoard<DeskEngine>(engineCount(), spawnEngine, report);
}
