import ts from 'typescript';

/** A file as the checks see it: a path from the project's folder, with forward slashes, and its content. */
export interface SourceText {
  readonly path: string;
  readonly text: string;
}

/** The syntax tree of a file, with parent links. */
export function parseSource({ path, text }: SourceText): ts.SourceFile {
  return ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);
}

/** Line number, from 1, on which a node begins (its comments not counted). */
export function lineOf(node: ts.Node): number {
  const source = node.getSourceFile();
  return source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
}

/** Line number, from 1, on which a node ends. */
export function lastLineOf(node: ts.Node): number {
  return node.getSourceFile().getLineAndCharacterOfPosition(node.getEnd()).line + 1;
}

/** Calls `visit` for a node and everything inside it. */
export function walk(node: ts.Node, visit: (node: ts.Node) => void): void {
  visit(node);
  node.forEachChild((child) => walk(child, visit));
}

/** How many lines a text has; a newline at the very end does not begin another one. */
export function countLines(text: string): number {
  return text.replace(/\n$/, '').split('\n').length;
}
