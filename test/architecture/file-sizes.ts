import ts from 'typescript';
import { countLines, lastLineOf, lineOf, parseSource, type SourceText, walk } from './source-text.ts';

const MAX_LINES = 400;

/** From this share of its lines on, a file is a table of data and may be as long as the data. */
const TABLE_SHARE = 0.7;

function holdsStatements(node: ts.Node): boolean {
  let found = false;
  walk(node, (inner) => {
    if (ts.isBlock(inner)) found = true;
  });
  return found;
}

/** Lines inside object and array literals that hold no code. */
function dataLines(node: ts.Node): number {
  const isLiteral = ts.isObjectLiteralExpression(node) || ts.isArrayLiteralExpression(node);
  if (isLiteral && !holdsStatements(node)) return lastLineOf(node) - lineOf(node) + 1;
  let sum = 0;
  node.forEachChild((child) => {
    sum += dataLines(child);
  });
  return sum;
}

/** Whether a file is mostly data. */
export function isDataTable(source: SourceText): boolean {
  return dataLines(parseSource(source)) >= TABLE_SHARE * countLines(source.text);
}

/** Files that are too long and are not tables of data. */
export function findLongFiles(files: readonly SourceText[]): string[] {
  return files
    .filter((file) => countLines(file.text) > MAX_LINES && !isDataTable(file))
    .map((file) => `${file.path}: ${countLines(file.text)} lines, at most ${MAX_LINES}`);
}
