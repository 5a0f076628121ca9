import { describe, expect, it } from 'vitest';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import { columnSources } from '../../lib/views/entry-columns.ts';
import {
  EMPTY_BOOK,
  NOTHING_COMPUTED,
  nextRows,
  type RowSources,
  scenarioRows,
} from '../../lib/views/scenario-rows.ts';
import { sheetColumns } from '../../lib/views/sheet-columns.ts';
import { isSameLine, sideLabels, sideLines } from '../../lib/views/side-lines.ts';
import { sampleResult } from './sample-result.ts';
import { DEMO_COLUMNS, DEMO_STATE } from './sheet-of-demo.ts';

const SHOWN = { system: 'us', currency: 'USD' } as const;
const SOURCES: RowSources = {
  state: DEMO_STATE,
  columns: DEMO_COLUMNS,
  outputs: OUTPUTS,
  shown: SHOWN,
  computed: () => NOTHING_COMPUTED,
};
const ROWS = scenarioRows(SOURCES);
const COLUMNS = sheetColumns(DEMO_COLUMNS, OUTPUTS, SHOWN).filter((column) => column.isHeadline);

function edited(id: string, purchaseMonth: number): RowSources {
  const scenarios = DEMO_STATE.plan.scenarios.map((one) => (one.id === id ? { ...one, purchaseMonth } : one));
  return { ...SOURCES, state: { ...DEMO_STATE, plan: { ...DEMO_STATE.plan, scenarios } } };
}

describe('the sheet sideways', () => {
  const lines = sideLines(COLUMNS, ROWS);

  it('has the names first, then each group under its heading', () => {
    expect(lines.slice(0, 3).map((line) => line.label)).toEqual(['Scenario', 'Set-up', 'Mid-size chambers']);
    const headings = lines.filter((line) => line.column === null).map((line) => line.label);
    expect(headings.slice(0, 2)).toEqual(['Set-up', 'Throughput']);
    expect(new Set(headings).size).toBe(headings.length);
    expect(lines.filter((line) => line.column !== null)).toHaveLength(COLUMNS.length);
  });

  it('labels its lines with their units', () => {
    expect(sideLabels(lines).get('capital')).toMatch(/^.+ \[\$\]$/);
    expect(sideLabels(lines).get('name')).toBe('Scenario');
  });

  it('knows which lines a change shows in', () => {
    const after = sideLines(COLUMNS, scenarioRows(edited('today', 0)));
    expect(lines.every((line, at) => after[at] && isSameLine(line, after[at]))).toBe(true);
    const result = sampleResult();
    const computed = { ...NOTHING_COMPUTED, lastResult: result };
    const fresh = sideLines(COLUMNS, scenarioRows({ ...SOURCES, computed: () => computed }));
    const changed = lines.filter((line, at) => fresh[at] && !isSameLine(line, fresh[at])).map((line) => line.id);
    expect(changed).toContain('capital');
    expect(changed).not.toContain('pumpArrangement');
  });
});

describe('nextRows', () => {
  const book = nextRows(EMPTY_BOOK, SOURCES);

  it('makes the rows that scenarioRows makes', () => {
    expect(book.rows).toEqual(ROWS);
  });

  it('makes again only the row that was edited', () => {
    const next = nextRows(book, edited('three-shared', 9));
    expect(next.rows.map((row, at) => row === book.rows[at])).toEqual([true, false, true, true, true, true]);
    expect(next.rows).toEqual(scenarioRows(edited('three-shared', 9)));
  });

  it('makes again a row with a new answer, a new fault, or other columns', () => {
    const result = sampleResult();
    const computed = (id: string) => (id === 'today' ? { ...NOTHING_COMPUTED, lastResult: result } : NOTHING_COMPUTED);
    const answered = nextRows(book, { ...SOURCES, computed });
    expect(answered.rows.map((row, at) => row === book.rows[at])).toEqual([false, true, true, true, true, true]);
    const rejected = [{ scenarioId: 'four-shared', columnId: 'hose', text: 'a', problem: 'b', remedy: 'c' }];
    const faulty = nextRows(book, { ...SOURCES, state: { ...DEMO_STATE, rejected } });
    expect(faulty.rows.findIndex((row, at) => row !== book.rows[at])).toBe(2);
    const others = nextRows(book, { ...SOURCES, columns: [...DEMO_COLUMNS] });
    expect(others.rows.some((row, at) => row === book.rows[at])).toBe(false);
  });

  it('keeps the very list when nothing has changed', () => {
    expect(nextRows(book, { ...SOURCES, computed: () => NOTHING_COMPUTED }).rows).toBe(book.rows);
  });

  it('shows work that was stopped, in rows without an answer alone', () => {
    const outcome = { kind: 'computed', result: sampleResult() } as const;
    const computed = (id: string) => (id === 'today' ? { ...NOTHING_COMPUTED, outcome } : NOTHING_COMPUTED);
    const { rows } = nextRows(EMPTY_BOOK, { ...SOURCES, computed, isStopped: true });
    expect(rows.map((row) => row.state).slice(0, 2)).toEqual(['fresh', 'stopped']);
  });
});

describe('columnSources', () => {
  it('stay the same while only scenarios are edited, but not when one is renamed', () => {
    const before = columnSources(DEMO_STATE.plan);
    const { plan } = edited('three-shared', 9).state;
    expect(columnSources(plan).every((part, at) => part === before[at])).toBe(true);
    const scenarios = plan.scenarios.map((one) => ({ ...one, name: `${one.name}!` }));
    expect(columnSources({ ...plan, scenarios }).every((part, at) => part === before[at])).toBe(false);
  });
});
