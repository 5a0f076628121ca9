import { listImports, resolveImport } from './imports.ts';
import type { SourceText } from './source-text.ts';

type Graph = ReadonlyMap<string, readonly string[]>;

/** What each file needs at run time. Imports of types alone vanish and cannot close a circle. */
function valueGraph(files: readonly SourceText[]): Graph {
  const needs = (file: SourceText) =>
    listImports(file)
      .filter((entry) => !entry.typeOnly)
      .flatMap((entry) => resolveImport(file.path, entry.specifier) ?? []);
  return new Map(files.map((file) => [file.path, needs(file)]));
}

/** Import circles among the files, each written once as `a > b > a`. */
export function findCycles(files: readonly SourceText[]): string[] {
  const graph = valueGraph(files);
  const finished = new Set<string>();
  const cycles: string[] = [];
  const visit = (path: string, trail: readonly string[]): void => {
    const start = trail.indexOf(path);
    if (start >= 0) cycles.push([...trail.slice(start), path].join(' > '));
    if (start >= 0 || finished.has(path)) return;
    for (const next of graph.get(path) ?? []) visit(next, [...trail, path]);
    finished.add(path);
  };
  for (const path of graph.keys()) visit(path, []);
  return cycles;
}
