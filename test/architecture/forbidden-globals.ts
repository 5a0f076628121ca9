import ts from 'typescript';
import { lineOf, parseSource, type SourceText, walk } from './source-text.ts';

/** Names that tie a computation to a browser, a process, a clock or chance. */
const GLOBALS = new Set([
  'window',
  'document',
  'navigator',
  'localStorage',
  'sessionStorage',
  'indexedDB',
  'fetch',
  'XMLHttpRequest',
  'WebSocket',
  'Worker',
  'self',
  'globalThis',
  'performance',
  'crypto',
  'setTimeout',
  'setInterval',
  'process',
]);

const MEMBERS = new Set(['Date.now', 'Math.random']);

/** Built-in functions whose last bit differs from engine to engine; lib/numeric/portable-math has its own. */
const LOOSE_MEMBERS = new Set(
  ['exp', 'expm1', 'log', 'log1p', 'log2', 'log10', 'pow', 'cbrt', 'hypot', 'sin', 'cos', 'tan', 'asin', 'acos', 'atan']
    .concat(['atan2', 'sinh', 'cosh', 'tanh', 'asinh', 'acosh', 'atanh'])
    .map((name) => `Math.${name}`),
);

/** Where figures are only written out, and where a bit more or less is never computed with. */
function writesOnly(path: string): boolean {
  return path.startsWith('lib/views/');
}

/** A power is exact only as a square, or of two. */
function isLoosePower(node: ts.Node): boolean {
  if (!ts.isBinaryExpression(node) || node.operatorToken.kind !== ts.SyntaxKind.AsteriskAsteriskToken) return false;
  return node.right.getText() !== '2' && node.left.getText() !== '2';
}

function nameLoose(node: ts.Node): string | undefined {
  if (ts.isPropertyAccessExpression(node) && LOOSE_MEMBERS.has(node.getText())) return node.getText();
  return isLoosePower(node) ? '**' : undefined;
}

function allows(path: string, name: string): boolean {
  if (LOOSE_MEMBERS.has(name) || name === '**') return writesOnly(path);
  if (!path.startsWith('lib/') || path.startsWith('lib/io/')) return true;
  return name === 'process' && path.startsWith('lib/headless/');
}

/** Names that the file itself declares or imports; such a name is not the global of the same spelling. */
function declaredNames(root: ts.SourceFile): Set<string> {
  const names = new Set<string>();
  walk(root, (node) => {
    const declares =
      ts.isVariableDeclaration(node) ||
      ts.isBindingElement(node) ||
      ts.isParameter(node) ||
      ts.isFunctionDeclaration(node) ||
      ts.isImportSpecifier(node);
    if (declares && node.name && ts.isIdentifier(node.name)) names.add(node.name.text);
  });
  return names;
}

/** Whether an identifier is only the name of a member or a property: `plan.document`, `{ window: 3 }`. */
function isMemberName(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.name === node;
  if (ts.isPropertyAssignment(parent) || ts.isMethodDeclaration(parent)) return parent.name === node;
  if (ts.isBindingElement(parent)) return parent.propertyName === node;
  return ts.isPropertySignature(parent) || ts.isPropertyDeclaration(parent);
}

function nameGlobal(node: ts.Node, declared: ReadonlySet<string>): string | undefined {
  if (ts.isNewExpression(node) && node.expression.getText() === 'Date' && !node.arguments?.length) return 'new Date()';
  if (ts.isCallExpression(node) && node.expression.getText() === 'Date') return 'Date()';
  if (ts.isPropertyAccessExpression(node) && MEMBERS.has(node.getText())) return node.getText();
  if (!ts.isIdentifier(node) || !GLOBALS.has(node.text) || declared.has(node.text)) return undefined;
  return isMemberName(node) || ts.isPartOfTypeNode(node) ? undefined : node.text;
}

function findInFile(source: SourceText): string[] {
  const root = parseSource(source);
  const declared = declaredNames(root);
  const faults: string[] = [];
  walk(root, (node) => {
    const name = nameGlobal(node, declared) ?? nameLoose(node);
    if (name && !allows(source.path, name)) faults.push(`${source.path}:${lineOf(node)}: ${name} is not for lib`);
  });
  return faults;
}

/** Uses of browser, process, clock or chance in lib; the browser edge lib/io is free, the command may read its process. */
export function findForbiddenGlobals(files: readonly SourceText[]): string[] {
  return files.filter((file) => file.path.startsWith('lib/')).flatMap(findInFile);
}
