import type { Bottleneck } from '../insight/insight-types.ts';
import type { OutputField } from '../model/outputs/output-field.ts';
import type { ScenarioOutcome, ScenarioResult } from '../model/scenario-result.ts';
import type { Scenario } from '../plan/plan-types.ts';
import { type BottleneckFlag, bottleneckFlag } from './bottleneck-flag.ts';
import type { EntryColumn } from './entry-column.ts';
import { quantityText, type ShownAs, shownValue } from './format-quantity.ts';
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

/** `fresh`: figures are of the row as it stands; `working`: being worked out; `held`: an entry or a finding holds it up. */
export type RowState = 'fresh' | 'working' | 'held';

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
}

export interface RowSources {
  readonly state: SheetState;
  readonly columns: readonly EntryColumn[];
  readonly outputs: readonly OutputField[];
  readonly shown: ShownAs;
  readonly computed: (scenarioId: string) => ComputedScenario;
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

function stateOf(faults: readonly RowMessage[], computed: ComputedScenario): RowState {
  if (faults.length > 0 || computed.outcome?.kind === 'refused') return 'held';
  return computed.outcome === null ? 'working' : 'fresh';
}

function flagOf(computed: ComputedScenario): BottleneckFlag | null {
  const bottleneck = computed.bottleneck === undefined ? computed.lastBottleneck : computed.bottleneck;
  const groups = computed.lastResult?.plant.groups ?? [];
  return bottleneck ? bottleneckFlag(bottleneck, Math.max(0, ...groups.map((group) => group.chambers))) : null;
}

function rowOf(sources: RowSources, scenario: Scenario, place: number): ScenarioRow {
  const computed = sources.computed(scenario.id);
  const faults = faultsOf(sources.state, scenario, sources.columns);
  const state = stateOf(faults, computed);
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
  };
}

/** The rows of the sheet, in the order of the plan; the first is today. */
export function scenarioRows(sources: RowSources): readonly ScenarioRow[] {
  return sources.state.plan.scenarios.map((scenario, place) => rowOf(sources, scenario, place));
}
