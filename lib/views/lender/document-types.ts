import type { Bottleneck } from '../../insight/insight-types.ts';
import type { ScenarioResult } from '../../model/scenario-result.ts';
import type { Plan, Scenario } from '../../plan/plan-types.ts';
import type { ScenarioRisk } from '../../risk/scenario-risk.ts';
import type { ShownAs } from '../format-quantity.ts';

/** A line of a table in a document. */
export interface DocumentRow {
  readonly cells: readonly string[];
  /** A heading spans the table. */
  readonly kind: 'plain' | 'total' | 'heading' | 'guess';
}

export interface DocumentTable {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly DocumentRow[];
  /** Columns from this one on hold figures and stand to the right; the number of columns where none does. */
  readonly figuresFrom: number;
  /** Columns among those that hold words after all. */
  readonly wordsIn?: readonly number[];
  /** Shares of the width by column [%]; as the text asks where not given. */
  readonly widths?: readonly number[];
  /** Needs the longer side of the paper. */
  readonly isWide?: boolean;
}

/** Charts that a document may hold; whoever draws it knows how. */
export type DocumentFigure = 'week' | 'batchCost' | 'payback' | 'cover' | 'stress';

export type DocumentBlock =
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'facts'; readonly facts: readonly DocumentFact[] }
  | { readonly kind: 'list'; readonly items: readonly DocumentItem[]; readonly isNumbered?: boolean }
  | { readonly kind: 'table'; readonly table: DocumentTable }
  | { readonly kind: 'figure'; readonly figure: DocumentFigure };

/** A line of a list, with what it is about; the empty text for nothing. */
export interface DocumentItem {
  readonly about: string;
  readonly words: string;
}

/** A figure that stands out, with what it is. */
export interface DocumentFact {
  readonly label: string;
  readonly value: string;
  readonly note?: string;
}

export interface DocumentSection {
  readonly id: string;
  readonly title: string;
  readonly blocks: readonly DocumentBlock[];
  /** Begins on a page of its own. */
  readonly isApart?: boolean;
}

/** A document as plain data, ready to be drawn or printed. */
export interface LenderDocument {
  readonly title: string;
  readonly shop: string;
  readonly place: string;
  readonly scenario: string;
  /** As year-month-day. */
  readonly date: string;
  readonly facts: readonly DocumentFact[];
  readonly sections: readonly DocumentSection[];
}

/** What a document is made from. All results are of the plan as it stands. */
export interface LenderSources {
  readonly plan: Plan;
  readonly scenario: Scenario;
  readonly result: ScenarioResult;
  readonly today: ScenarioResult;
  /** Null where there is none to tell. */
  readonly bottleneck: Bottleneck | null;
  readonly todayBottleneck: Bottleneck | null;
  readonly risk: ScenarioRisk;
  readonly shown: ShownAs;
  /** As year-month-day. */
  readonly date: string;
}
