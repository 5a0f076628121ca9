import { engineCount, spawnEngine } from './engine-client.ts';
import type { DeskEngine } from './engine-desk.ts';
import { type Board, type BoardManners, JobBoard, type JobReport } from './job-board.ts';

/** One engine waits for the row that is edited next; it keeps the weeks of all rows in memory, so it is not stopped lightly. */
const MANNERS: BoardManners = { quickOnly: 1, grace: 1000 };

/** A board of engines, each in a thread of its own. */
export function engineBoard(report: JobReport): Board<DeskEngine> {
  return new JobBoard<DeskEngine>(Math.max(2, engineCount()), spawnEngine, report, MANNERS);
}
