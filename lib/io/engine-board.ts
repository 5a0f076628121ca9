import { engineCount, spawnEngine } from './engine-client.ts';
import type { DeskEngine } from './engine-desk.ts';
import { createJobBoard, type JobBoard } from './job-board.ts';

/** A board of engines, each in a thread of its own. */
export function wrapBoard(report: {
  onDone: (key: string, value: unknown) => void;
  onFailed: (key: string, reason: unknown) => void;
}): JobBoard<DeskEngine> {
  return createJobBoard<DeskEngine>({ engines: engineCount(), spawn: spawnEngine, ...report });
}
