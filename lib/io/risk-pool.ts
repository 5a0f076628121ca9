import { type Remote, wrap } from 'comlink';
import { engineCount } from './engine-client.ts';
import { type EngineHandle, JobBoard } from './job-board.ts';
import type { RiskApi } from './risk.worker.ts';
import { type RiskEngine, RiskRuns } from './risk-runs.ts';

function spawnRiskEngine(): EngineHandle<Remote<RiskApi>> {
  const worker = new Worker(new URL('./risk.worker.ts', import.meta.url), { type: 'module', name: 'risk' });
  return { engine: wrap<RiskApi>(worker), stop: () => worker.terminate() };
}

/** Threads that work draws out beside the page; they start when the first run is asked for. */
export function riskPool(): RiskRuns {
  return new RiskRuns((report) => new JobBoard<RiskEngine>(engineCount(), spawnRiskEngine, report));
}
