import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { dryingCase } from '../fixtures/drying-cases.ts';
import type { SharedStart } from '../plant/dry-together.ts';

const SCRIPT = fileURLToPath(new URL('../fixtures/drying-reference.py', import.meta.url));

/** Runs the reference script's `run` on the group it is given and prints the seconds that took, the start of Python left out. */
const TIMER = `
import importlib.util, json, sys, time
spec = importlib.util.spec_from_file_location('reference', sys.argv[1])
reference = importlib.util.module_from_spec(spec)
spec.loader.exec_module(reference)
group = json.load(sys.stdin)
start = time.perf_counter()
reference.run(group)
print(time.perf_counter() - start)
`;

/**
 * Seconds that SciPy takes to integrate a shared start by the independent reference script; null where there is no Python
 * with SciPy.
 */
export function scipySeconds(start: SharedStart): number | null {
  try {
    const input = JSON.stringify(dryingCase(start));
    return Number(execFileSync('python3', ['-c', TIMER, SCRIPT], { input, stdio: ['pipe', 'pipe', 'ignore'] }));
  } catch {
    return null;
  }
}
