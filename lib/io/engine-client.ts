import { type Remote, wrap } from 'comlink';
import type { EngineApi } from './engine.worker.ts';
import type { EngineHandle } from './job-board.ts';

export type RemoteEngine = Remote<EngineApi>;

/** Starts an engine in a thread of its own. */
export function spawnEngine(): EngineHandle<RemoteEngine> {
  const worker = new Worker(new URL('./engine.worker.ts', import.meta.url), { type: 'module', name: 'engine' });
  return { engine: wrap<EngineApi>(worker), stop: () => worker.terminate() };
}

/** How many engines this machine can run beside the page: all cores but one, at most four. */
export function engineCount(): number {
  return Math.max(1, Math.min(4, (navigator.hardwareConcurrency ?? 2) - 1));
}
