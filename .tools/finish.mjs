// What a build still needs when Next has written it.
import { readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pagePolicy } from './content-policy.mjs';
import { filesIn } from './files-in.mjs';
import { writeOfflineWorker } from './offline.mjs';

/** The bundler leaves the source of every worker and empty source maps beside the scripts; nothing asks for them. */
const LEFT_OVER = /^_next\/static\/.*\.(?:ts|map)$/;

/** The page with its policy inside, for hosts that send no headers of their own. */
export function guarded(html) {
  const policy = pagePolicy(html).replaceAll('"', '&quot;');
  return html.replace('<head>', `<head><meta http-equiv="Content-Security-Policy" content="${policy}"/>`);
}

/** Takes away what nothing asks for, puts its policy into every page, and writes the service worker over the outcome. */
export function finish(folder) {
  for (const file of filesIn(folder)) {
    const path = join(folder, file);
    if (LEFT_OVER.test(file)) rmSync(path);
    else if (file.endsWith('.html')) writeFileSync(path, guarded(readFileSync(path, 'utf8')));
  }
  writeOfflineWorker(folder);
}
