// Builds the static site into out/ and leaves a stamp there, by which `npm start` knows whether to build again.
import { rmSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { finish } from './finish.mjs';
import { OUT } from './paths.mjs';
import { runTool } from './run.mjs';
import { sourceStamp, writeStamp } from './stamp.mjs';

/** Builds the site; resolves to the exit code of the build. */
export async function build() {
  const stamp = sourceStamp();
  rmSync(OUT, { recursive: true, force: true });
  const code = await runTool('next', ['build']);
  if (code !== 0) return code;
  finish(OUT);
  writeStamp(stamp);
  return 0;
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) process.exitCode = await build();
