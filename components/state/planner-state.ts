import type { DeskSnapshot } from '../../lib/io/engine-desk.ts';
import type { PlanCard } from '../../lib/io/plan-storage.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import type { FileFaultLine } from '../../lib/views/plan-file-words.ts';
import type { SheetHistory } from '../../lib/views/sheet-history.ts';
import type { SheetLook } from '../../lib/views/sheet-look.ts';

/** What the last gesture did, or what went wrong. */
export interface Notice {
  readonly text: string;
  readonly tone: 'plain' | 'bad';
}

/** A file that could not be opened; the plan stays as it was. */
export interface OpenFailure {
  readonly fileName: string;
  readonly lines: readonly FileFaultLine[];
}

/** `starting`: looking for a kept plan; `writing`: an edit is about to be kept; `loose`: the browser does not keep it. */
export type Keeping = 'starting' | 'writing' | 'kept' | 'loose';

/** Everything the page shows, from which it is drawn. */
export interface PlannerState {
  readonly sheet: SheetHistory;
  /** The scenario the evidence speaks of. */
  readonly currentId: string;
  /** The scenarios whose rows are selected in the sheet, the current one among them. */
  readonly selectedIds: readonly string[];
  readonly notice: Notice;
  readonly desk: DeskSnapshot;
  readonly keeping: Keeping;
  readonly openFailure: OpenFailure | null;
  /** Id of the open plan among the kept ones. */
  readonly planId: string;
  /** The plans kept in this browser, latest first; empty until they are asked for. */
  readonly cards: readonly PlanCard[];
  /** How the sheet of this plan is looked at. */
  readonly look: SheetLook;
  /** A plan that a link has brought and that waits to be opened. */
  readonly linked: Plan | null;
}
