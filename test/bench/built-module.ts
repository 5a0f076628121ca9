import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSync } from 'esbuild';

const ROOT = join(import.meta.dirname, '../..');

/**
 * A module of the project as the browser gets it: with all it needs in one script. The test runner loads modules one by one and
 * looks every imported function up anew, which takes longer than some of the functions themselves.
 * @param path from the project's top level
 */
export function builtModule<Module>(path: string): Module {
  const folder = mkdtempSync(join(tmpdir(), 'rimeplan-bench-'));
  const file = join(folder, 'built.cjs');
  try {
    const { outputFiles } = buildSync({
      entryPoints: [join(ROOT, path)],
      bundle: true,
      format: 'cjs',
      platform: 'node',
      target: 'node20',
      write: false,
    });
    writeFileSync(file, outputFiles[0]?.text ?? '');
    return createRequire(import.meta.url)(file) as Module;
  } finally {
    rmSync(folder, { recursive: true });
  }
}
