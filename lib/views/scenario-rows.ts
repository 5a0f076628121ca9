import type { Bottleneck } from '../insight/insight-types.ts';
import type { OutputField } from '../model/outputs/output-field.ts';
import type { ScenarioOutcome, ScenarioResult } from '../model/scenario-result.ts';
import type { Scenario } from '../plan/plan-types.ts';
import { type BottleneckFlag, bottleneckFlag } from './bottleneck-flag.ts';
import type { EntryColumn } from './entry-column.ts';
import { quantityText, type ShownAs, shownValue } from './format-quantity.ts';
import { keepSame } from './keep-same.ts';
import { rejectedAt, type SheetState } from './sheet-state.ts';

/** What the engine has said of one scenario so far. */
export interface ComputedScenario {
  /** The answer for the scenario as it is now; null while it is being worked out. */
  readonly outcome: ScenarioOutcome | null;
  /** The last figures there were, perhaps of an earlier state. */
  readonly lastResult: ScenarioResult | null;
  /** The bottleneck for the scenario as it is now; undefined while it is being worked out, null when there is none to tell. */
  readonly bottleneck: Bottleneck | null | undefined;
  readonly lastBottleneck: Bottleneck | null;
}

export const NOTHING_COMPUTED: ComputedScenario = {
  outcome: null,
  lastResult: null,
  bottleneck: undefined,
  lastBottleneck: null,
};

/**
 * `fresh`: figures are of the row as it stands; `working`: being worked out; `stopped`: not worked out, as the user has stopped
 * it; `held`: an entry or a finding holds it up.
 */
export type RowState = 'fresh' | 'working' | 'stopped' | 'held';

/** Something to tell about a row; an error holds the row up, a warning does not. */
export interface RowMessage {
  readonly severity: 'error' | 'warning';
  readonly problem: string;
  readonly remedy: string;
}

export interface EntryCell {
  readonly text: string;
  readonly plainText: string;
  /** The value has no effect in this scenario. */
  readonly isIdle: boolean;
  /** What is wrong with the text; null when it is in order. */
  readonly fault: RowMessage | null;
}

export interface OutputCell {
  readonly text: string;
  readonly plainText: string;
}

/** One row of the sheet, ready to be drawn. */
export interface ScenarioRow {
  readonly id: string;
  readonly name: string;
  readonly place: number;
  readonly isToday: boolean;
  readonly state: RowState;
  readonly entries: Readonly<Record<string, EntryCell>>;
  readonly outputs: Readonly<Record<string, OutputCell>>;
  readonly flag: BottleneckFlag | null;
  readonly isFlagFresh: boolean;
  readonly messages: readonly RowMessage[];
  /** What somebody wrote beside cells, by the id of the column. */
  readonly notes: Readonly<Record<string, string>>;
}

export interface RowSources {
  readonly state: SheetState;
  readonly columns: readonly EntryColumn[];
  readonly outputs: readonly OutputField[];
  readonly shown: ShownAs;
  readonly computed: (scenarioId: string) => ComputedScenario;
  /** The user has stopped the work. */
  readonly isStopped?: boolean;
}

function entryCell(sources: RowSources, scenario: Scenario, column: EntryColumn): EntryCell {
  const rejected = rejectedAt(sources.state, scenario.id, column.id);
  const isIdle = column.isIdle(scenario);
  if (!rejected) return { text: column.text(scenario), plainText: column.plainText(scenario), isIdle, fault: null };
  const { text, problem, remedy } = rejected;
  return { text, plainText: text, isIdle, fault: { severity: 'error', problem, remedy } };
}

function outputCell(output: OutputField, result: ScenarioResult | null, shown: ShownAs): OutputCell {
  if (!result) return { text: '', plainText: '' };
  const value = output.read(result);
  const plain = value === null ? '' : String(Number(shownValue(value, output.dimension, shown).toPrecision(10)));
  return { text: quantityText(value, output.dimension, shown), plainText: plain };
}

function faultsOf(state: SheetState, scenario: Scenario, columns: readonly EntryColumn[]): RowMessage[] {
  return state.rejected
    .filter((entry) => entry.scenarioId === scenario.id)
    .map(({ columnId, text, problem, remedy }) => {
      const label = columns.find((column) => column.id === columnId)?.label ?? columnId;
      return { severity: 'error', problem: `${label} "${text}": ${problem}`, remedy };
    });
}

function findingsOf(computed: ComputedScenario): RowMessage[] {
  const { outcome } = computed;
  const findings = outcome?.kind === 'refused' ? outcome.findings : (computed.lastResult?.warnings ?? []);
  return findings.map(({ severity, problem, remedy }) => ({ severity, problem, remedy }));
}

function stateOf(faults: readonly RowMessage[], { outcome }: ComputedScenario, isStopped: boolean): RowState {
  if (faults.length > 0 || outcome?.kind === 'refused') return 'held';
  if (outcome) return 'fresh';
  return isStopped ? 'stopped' : 'working';
}

function flagOf(computed: ComputedScenario): BottleneckFlag | null {
  const bottleneck = computed.bottleneck === undefined ? computed.lastBottleneck : computed.bottleneck;
  const groups = computed.lastResult?.plant.groups ?? [];
  return bottleneck ? bottleneckFlag(bottleneck, Math.max(0, ...groups.map((group) => group.chambers))) : null;
}

function rowOf(sources: RowSources, scenario: Scenario, place: number): ScenarioRow {
  const computed = sources.computed(scenario.id);
  const faults = faultsOf(sources.state, scenario, sources.columns);
  const state = stateOf(faults, computed, sources.isStopped === true);
  const cells = sources.columns.map((column) => [column.id, entryCell(sources, scenario, column)] as const);
  const figures = sources.outputs.map(
    (output) => [output.id, outputCell(output, computed.lastResult, sources.shown)] as const,
  );
  return {
    id: scenario.id,
    name: scenario.name,
    place,
    isToday: place === 0,
    state,
    entries: Object.fromEntries(cells),
    outputs: Object.fromEntries(figures),
    flag: flagOf(computed),
    isFlagFresh: state === 'fresh' && computed.bottleneck !== undefined,
    messages: [...faults, ...findingsOf(computed)],
    notes: scenario.notes,
  };
}

/** The rows of the sheet, in the order of the plan; the first is today. */
export function scenarioRows(sources: RowSources): readonly ScenarioRow[] {
  return sources.state.plan.scenarios.map((scenario, place) => rowOf(sources, scenario, place));
}

/** Rows with all that each was made of. */
export interface RowBook {
  readonly rows: readonly ScenarioRow[];
  readonly made: ReadonlyMap<string, { readonly of: readonly unknown[]; readonly row: ScenarioRow }>;
}

export const EMPTY_BOOK: RowBook = { rows: [], made: new Map() };

/** All that a row hangs on: while every one of these is the same, so is the row. */
function ingredients(sources: RowSources, scenario: Scenario, place: number): readonly unknown[] {
  const { state, columns, outputs, shown, computed, isStopped } = sources;
  const { outcome, lastResult, bottleneck, lastBottleneck } = computed(scenario.id);
  const rejected = state.rejected.filter((entry) => entry.scenarioId === scenario.id);
  const figures = [outcome, lastResult, bottleneck, lastBottleneck, isStopped === true && !outcome];
  return [scenario, place, columns, outputs, shown.system, shown.currency, ...figures, ...rejected];
}

/** The rows as `scenarioRows` makes them; a row of which nothing has changed since the book before is the same object. */
export function nextRows(before: RowBook, sources: RowSources): RowBook {
  const made = sources.state.plan.scenarios.map((scenario, place) => {
    const of = ingredients(sources, scenario, place);
    const was = before.made.get(scenario.id);
    const isSame = was?.of.length === of.length && of.every((part, at) => part === was.of[at]);
    return was && isSame ? was : { of, row: rowOf(sources, scenario, place) };
  });
  const rows = keepSame(
    before.rows,
    made.map(({ row }) => row),
    (a, b) => a === b,
  );
  return { rows, made: new Map(made.map((one) => [one.row.id, one])) };
}
