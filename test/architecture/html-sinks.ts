import ts from 'typescript';
import { lineOf, parseSource, type SourceText, walk } from './source-text.ts';

/** Names through which a text becomes markup or code. What the user enters must only ever become text. */
const SINKS: ReadonlySet<string> = new Set([
  'dangerouslySetInnerHTML',
  'innerHTML',
  'outerHTML',
  'insertAdjacentHTML',
  'createContextualFragment',
  'srcdoc',
  'srcDoc',
  'setHTMLUnsafe',
  'execScript',
  'eval',
  'Function',
]);

function isSink(node: ts.Node): boolean {
  if (!ts.isIdentifier(node) || !SINKS.has(node.text)) return false;
  // The type of a function is no code, and neither is a word in a type.
  return !ts.isTypeReferenceNode(node.parent);
}

/** Places where a text would become markup or code. */
export function findHtmlSinks(files: readonly SourceText[]): string[] {
  return files.flatMap((file) => {
    const found: string[] = [];
    walk(parseSource(file), (node) => {
      if (isSink(node)) found.push(`${file.path}:${lineOf(node)}: ${node.getText()}`);
    });
    return found;
  });
}
