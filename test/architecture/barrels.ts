import ts from 'typescript';
import { parseSource, type SourceText } from './source-text.ts';

/** A file that declares nothing of its own and only hands on what others declare. */
function isBarrel(source: SourceText): boolean {
  const { statements } = parseSource(source);
  return (
    statements.some((statement) => ts.isExportDeclaration(statement)) &&
    statements.every((statement) => ts.isExportDeclaration(statement) || ts.isImportDeclaration(statement))
  );
}

/** Files that only re-export. */
export function findBarrels(files: readonly SourceText[]): string[] {
  return files.filter(isBarrel).map((file) => `${file.path}: only re-exports; import from the files themselves`);
}
