import ts from 'typescript';
import { lineOf, parseSource, type SourceText, walk } from './source-text.ts';

/** One import of a file: what it names, where, and whether it vanishes when the types are stripped. */
export interface Import {
  readonly specifier: string;
  readonly line: number;
  readonly typeOnly: boolean;
}

function allSpecifiersAreTypes(clause: ts.ImportClause): boolean {
  const named = clause.namedBindings;
  if (clause.name || !named || !ts.isNamedImports(named)) return false;
  return named.elements.length > 0 && named.elements.every((element) => element.isTypeOnly);
}

function isTypeOnly(node: ts.ImportDeclaration | ts.ExportDeclaration): boolean {
  if (ts.isExportDeclaration(node)) return node.isTypeOnly;
  const clause = node.importClause;
  if (!clause) return false;
  return clause.phaseModifier === ts.SyntaxKind.TypeKeyword || allSpecifiersAreTypes(clause);
}

function readStatement(node: ts.Node): Import | undefined {
  if (!ts.isImportDeclaration(node) && !ts.isExportDeclaration(node)) return undefined;
  if (!node.moduleSpecifier || !ts.isStringLiteral(node.moduleSpecifier)) return undefined;
  return { specifier: node.moduleSpecifier.text, line: lineOf(node), typeOnly: isTypeOnly(node) };
}

function readCall(node: ts.Node): Import | undefined {
  if (!ts.isCallExpression(node) || node.expression.kind !== ts.SyntaxKind.ImportKeyword) return undefined;
  const [argument] = node.arguments;
  if (!argument || !ts.isStringLiteralLike(argument)) return undefined;
  return { specifier: argument.text, line: lineOf(node), typeOnly: false };
}

function readImportType(node: ts.Node): Import | undefined {
  if (!ts.isImportTypeNode(node) || !ts.isLiteralTypeNode(node.argument)) return undefined;
  const { literal } = node.argument;
  return ts.isStringLiteral(literal) ? { specifier: literal.text, line: lineOf(node), typeOnly: true } : undefined;
}

/** Every import of a file: statements, re-exports, `import()` calls and `import('…')` types. */
export function listImports(source: SourceText): Import[] {
  const found: Import[] = [];
  walk(parseSource(source), (node) => {
    const entry = readStatement(node) ?? readCall(node) ?? readImportType(node);
    if (entry) found.push(entry);
  });
  return found;
}

/** The path that a relative import names, from the project's folder; undefined for a package. */
export function resolveImport(from: string, specifier: string): string | undefined {
  if (!specifier.startsWith('.')) return undefined;
  const parts = from.split('/').slice(0, -1);
  for (const part of specifier.split('/')) {
    if (part === '..') parts.pop();
    else if (part !== '.') parts.push(part);
  }
  return parts.join('/');
}
