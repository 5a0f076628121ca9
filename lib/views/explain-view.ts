import type { OutputField } from '../model/outputs/output-field.ts';
import type { NoFigure, Term, WorkContext, Working } from '../model/workings/working.ts';
import type { Plan } from '../plan/plan-types.ts';
import type { ShownAs } from './format-quantity.ts';
import { type InputNote, inputNote } from './input-note.ts';
import { preciseText } from './precise-text.ts';
import { sourceWords } from './source-words.ts';

/** One number of a working, ready to be drawn. */
export interface ExplainLine {
  /** Its place among the lines; labels may come twice. */
  readonly key: string;
  readonly symbol: string;
  readonly label: string;
  readonly value: string;
  /** Where the number comes from, in a word or two. */
  readonly from: string;
  /** A value of the plan that is a guess. */
  readonly isGuess: boolean;
}

/** One level of an explanation. Every line can be opened. */
export type ExplainPage =
  | {
      readonly kind: 'worked';
      readonly formula: string;
      readonly symbols: string;
      readonly lines: readonly ExplainLine[];
    }
  | {
      readonly kind: 'counted';
      /** Where it was counted, in words. */
      readonly where: string;
      readonly what: string;
      readonly sources: readonly string[];
      readonly lines: readonly ExplainLine[];
    }
  | { readonly kind: 'input'; readonly note: InputNote }
  | { readonly kind: 'fixed'; readonly why: string }
  | { readonly kind: 'none'; readonly why: string };

export interface ExplainView {
  /** From the figure of the sheet down to what is shown, each by its label. */
  readonly crumbs: readonly string[];
  readonly value: string;
  readonly page: ExplainPage;
}

/** A place in the tree of numbers. */
interface Node {
  readonly label: string;
  readonly value: string;
  readonly content: Working | Exclude<Term['origin'], { kind: 'worked' }> | NoFigure;
}

function nodeOf(term: Term, shown: ShownAs): Node {
  const { label, origin } = term;
  const value = preciseText(term.value, term.dimension, shown);
  return { label, value, content: origin.kind === 'worked' ? origin.work() : origin };
}

function inputNode(plan: Plan, path: string, shown: ShownAs): Node {
  const note = inputNote(plan, path, shown);
  const label = note.thing === '' || path.startsWith('scenarios.') ? note.label : `${note.label}: ${note.thing}`;
  return { label, value: note.value, content: { kind: 'input', path } };
}

function childrenOf({ content }: Node, plan: Plan, shown: ShownAs): Node[] {
  if (content.kind === 'worked') return content.terms.map((term) => nodeOf(term, shown));
  return content.kind === 'counted' ? content.inputs.map((path) => inputNode(plan, path, shown)) : [];
}

const COUNTED_WORDS = {
  week: 'counted in the simulated week',
  months: 'booked month by month in the projection',
} as const;

function originWords(node: Node, plan: Plan, shown: ShownAs): Pick<ExplainLine, 'from' | 'isGuess'> {
  switch (node.content.kind) {
    case 'worked':
      return { from: 'worked out', isGuess: false };
    case 'counted':
      return { from: COUNTED_WORDS[node.content.where], isGuess: false };
    case 'fixed':
      return { from: 'fixed', isGuess: false };
    case 'none':
      return { from: '', isGuess: false };
    case 'input': {
      const { origin } = inputNote(plan, node.content.path, shown);
      return { from: origin, isGuess: origin === 'guess' };
    }
  }
}

function linesOf(node: Node, plan: Plan, shown: ShownAs): ExplainLine[] {
  const { content } = node;
  return childrenOf(node, plan, shown).map((child, k) => ({
    key: String(k),
    symbol: content.kind === 'worked' ? (content.terms[k]?.symbol ?? '') : '',
    label: child.label,
    value: child.value,
    ...originWords(child, plan, shown),
  }));
}

function pageOf(node: Node, plan: Plan, shown: ShownAs): ExplainPage {
  const { content } = node;
  switch (content.kind) {
    case 'worked':
      return {
        kind: 'worked',
        formula: content.formula,
        symbols: content.symbols,
        lines: linesOf(node, plan, shown),
      };
    case 'counted':
      return {
        kind: 'counted',
        where: COUNTED_WORDS[content.where],
        what: content.what,
        sources: content.sources.map(sourceWords),
        lines: linesOf(node, plan, shown),
      };
    case 'input':
      return { kind: 'input', note: inputNote(plan, content.path, shown) };
    default:
      return content;
  }
}

function rootOf(output: OutputField, context: WorkContext, shown: ShownAs): Node {
  const value = output.read(context.result);
  return {
    label: output.label,
    value: value === null ? '' : preciseText(value, output.dimension, shown),
    content: output.working(context),
  };
}

/**
 * How a figure of the sheet comes about, at some depth.
 * @param trail which line was opened on each level, from the figure itself downward; what leads nowhere is left out
 */
export function explainView(
  output: OutputField,
  context: WorkContext,
  trail: readonly number[],
  shown: ShownAs,
): ExplainView {
  const { plan } = context;
  let node = rootOf(output, context, shown);
  const crumbs = [node.label];
  for (const place of trail) {
    const child = childrenOf(node, plan, shown)[place];
    if (!child) break;
    node = child;
    crumbs.push(node.label);
  }
  return { crumbs, value: node.value, page: pageOf(node, plan, shown) };
}
