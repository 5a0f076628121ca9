import { listImports, resolveImport } from './imports.ts';
import type { SourceText } from './source-text.ts';

/**
 * What the page would have to fetch of files that it must leave to its workers, each as the way that leads there.
 * Workers are started by address and not by import, so they are no way.
 * @param starts paths of the files that the page begins with
 * @param isForbidden whether a path must not be reached
 */
export function findForbiddenReach(
  files: readonly SourceText[],
  starts: readonly string[],
  isForbidden: (path: string) => boolean,
): string[] {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const seen = new Set(starts);
  const waiting = starts.map((start) => [start]);
  const found: string[] = [];
  for (let trail = waiting.shift(); trail; trail = waiting.shift()) {
    const file = byPath.get(trail.at(-1) ?? '');
    if (!file) continue;
    for (const entry of listImports(file)) {
      const target = entry.typeOnly ? undefined : resolveImport(file.path, entry.specifier);
      if (!target || seen.has(target)) continue;
      seen.add(target);
      if (isForbidden(target)) found.push([...trail, target].join(' > '));
      else waiting.push([...trail, target]);
    }
  }
  return found;
}
