import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** Every file below a folder, by its path from there with forward slashes, in a fixed order. */
export function filesIn(folder) {
  return readdirSync(folder, { recursive: true })
    .filter((file) => statSync(join(folder, file)).isFile())
    .map((file) => file.replaceAll('\\', '/'))
    .sort();
}
