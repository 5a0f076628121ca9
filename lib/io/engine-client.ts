import { type Remote, wrap } from 'comlink';
import type { EngineApi } from './engine.worker.ts';
import type { EngineHandle } from './job-board.ts';
import { newPlanId } from './open-plan-id.ts';
import { engineName } from './share-weeks.ts';

export type RemoteEngine = Remote<EngineApi>;

/** Tells this page's engines from those of other tabs. */
const PAGE = newPlanId();

/** Starts an engine in a thread of its own. @param isWaiting it is the one that waits for the next edit */
export function spawnEngine(isWaiting: boolean): EngineHandle<RemoteEngine> {
  const name = engineName(PAGE, isWaiting);
  const worker = new Worker(new URL('./engine.worker.ts', import.meta.url), { type: 'module', name });
  return { engine: wrap<EngineApi>(worker), stop: () => worker.terminate() };
}

/** How many engines this machine can run beside the page: all cores but one, at most four. */
export function engineCount(): number {
  return Math.max(1, Math.min(4, (navigator.hardwareConcurrency ?? 2) - 1));
}
