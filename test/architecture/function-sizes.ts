import ts from 'typescript';
import { lastLineOf, lineOf, parseSource, type SourceText, walk } from './source-text.ts';

const MAX_LINES = 60;
const MAX_COMPONENT_LINES = 80;

interface FunctionSize {
  readonly path: string;
  readonly line: number;
  /** Undefined for a function that is handed over without a name. */
  readonly name: string | undefined;
  readonly lines: number;
}

function nameOf(node: ts.FunctionLikeDeclaration): string | undefined {
  if (ts.isConstructorDeclaration(node)) return 'constructor';
  if (node.name) return node.name.getText();
  const { parent } = node;
  const isNamedByParent = ts.isVariableDeclaration(parent) || ts.isPropertyAssignment(parent);
  return isNamedByParent ? parent.name.getText() : undefined;
}

function hasBody(node: ts.Node): node is ts.FunctionLikeDeclaration {
  return ts.isFunctionLike(node) && 'body' in node && node.body !== undefined;
}

/** Every function of a file with its length in lines, from its first word to its last bracket. */
export function listFunctions(source: SourceText): FunctionSize[] {
  const found: FunctionSize[] = [];
  walk(parseSource(source), (node) => {
    if (!hasBody(node)) return;
    const line = lineOf(node);
    found.push({ path: source.path, line, name: nameOf(node), lines: lastLineOf(node) - line + 1 });
  });
  return found;
}

/** Markup is long without being involved, so a React component may be longer. */
function limitFor({ path, name }: FunctionSize): number {
  const isComponent = path.startsWith('components/') && path.endsWith('.tsx') && /^[A-Z]/.test(name ?? '');
  return isComponent ? MAX_COMPONENT_LINES : MAX_LINES;
}

/** Functions that are too long. */
export function findLongFunctions(files: readonly SourceText[]): string[] {
  return files
    .flatMap(listFunctions)
    .filter((entry) => entry.lines > limitFor(entry))
    .map(
      (entry) =>
        `${entry.path}:${entry.line}: ${entry.name ?? 'a function'} has ${entry.lines} lines, at most ${limitFor(entry)}`,
    );
}

/** Median length of the functions that have a name [lines]; 0 when there is none. */
export function medianFunctionLines(files: readonly SourceText[]): number {
  const lengths = files
    .flatMap(listFunctions)
    .filter((entry) => entry.name !== undefined)
    .map((entry) => entry.lines)
    .sort((a, b) => a - b);
  const middle = lengths.length / 2;
  const upper = lengths[Math.floor(middle)] ?? 0;
  const lower = lengths[Math.ceil(middle) - 1] ?? 0;
  return (lower + upper) / 2;
}
