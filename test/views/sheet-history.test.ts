import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { applyEntries, emptyCells } from '../../lib/views/apply-entries.ts';
import {
  addScenarioLikeToday,
  deleteScenarios,
  duplicateScenario,
  insertScenarioBelow,
  moveScenariosBy,
  moveScenariosTo,
} from '../../lib/views/row-gestures.ts';
import {
  performCommand,
  performEntries,
  presentState,
  redoGesture,
  replacePlan,
  type SheetHistory,
  startSheet,
  undoGesture,
} from '../../lib/views/sheet-history.ts';
import { DEMO_COLUMNS, scenarioOf } from './sheet-of-demo.ts';

const START = startSheet(DEMO_PLAN);
const COUNT = { scenarioId: 'three-shared', columnId: 'chambers:mid' };

function entered(sheet: SheetHistory, text: string, columnId = COUNT.columnId): SheetHistory {
  const applied = applyEntries(presentState(sheet), [{ ...COUNT, columnId, text }], DEMO_COLUMNS);
  return performEntries(sheet, applied).sheet;
}

function countIn(sheet: SheetHistory): number | undefined {
  return scenarioOf(presentState(sheet).plan, 'three-shared').chambers[0]?.count;
}

describe('the history of the sheet', () => {
  it('goes back and forth over an entry', () => {
    const eight = entered(START, '8');
    expect(countIn(eight)).toBe(8);
    const undone = undoGesture(eight);
    expect(countIn(undone.sheet)).toBe(3);
    expect(undone.said).toBe('Undone: change cell.');
    expect(countIn(redoGesture(undone.sheet).sheet)).toBe(8);
  });

  it('makes one step of a whole block', () => {
    const texts = [
      { ...COUNT, text: '5' },
      { ...COUNT, columnId: 'purchaseMonth', text: '6' },
      { ...COUNT, columnId: 'pump', text: 'Gigantic' },
    ];
    const done = performEntries(START, applyEntries(presentState(START), texts, DEMO_COLUMNS));
    expect(done.sheet.history.past).toHaveLength(1);
    expect(presentState(done.sheet).rejected).toHaveLength(1);
    const undone = presentState(undoGesture(done.sheet).sheet);
    expect(undone.plan).toBe(DEMO_PLAN);
    expect(undone.rejected).toEqual([]);
  });

  it('takes a text that was not understood as a step of its own', () => {
    const bad = entered(entered(START, '8'), 'lots');
    expect(presentState(bad).rejected).toHaveLength(1);
    const back = undoGesture(bad).sheet;
    expect(presentState(back).rejected).toEqual([]);
    expect(countIn(back)).toBe(8);
    expect(presentState(redoGesture(back).sheet).rejected).toMatchObject([{ text: 'lots' }]);
  });

  it('keeps a marked entry while other cells are worked on', () => {
    const both = entered(entered(START, 'lots'), '6', 'purchaseMonth');
    expect(presentState(both).rejected).toHaveLength(1);
    expect(scenarioOf(presentState(both).plan, 'three-shared').purchaseMonth).toBe(6);
  });

  it('records nothing when nothing changed', () => {
    expect(entered(START, '3')).toBe(START);
    const applied = emptyCells(presentState(START), [{ scenarioId: 'three-shared', columnId: 'name' }], DEMO_COLUMNS);
    expect(performEntries(START, applied).sheet).toBe(START);
  });

  it('drops marked entries of a row that is gone, and brings them back with it', () => {
    const bad = entered(START, 'lots');
    const { command, said } = deleteScenarios(presentState(bad).plan, ['three-shared']);
    const gone = performCommand(bad, command, said);
    expect(presentState(gone.sheet).rejected).toEqual([]);
    expect(presentState(undoGesture(gone.sheet).sheet).rejected).toHaveLength(1);
  });

  it('says why a command cannot be done and stays as it was', () => {
    const { command, said } = deleteScenarios(DEMO_PLAN, ['today']);
    const refused = performCommand(START, command, said);
    expect(refused.done).toBe(false);
    expect(refused.sheet).toBe(START);
    expect(refused.said).toContain('judged against it');
  });

  it('takes another plan as one step', () => {
    const other = { ...DEMO_PLAN, name: 'Another' };
    const opened = replacePlan(entered(START, '8'), other, 'open Another', 'Another is open.').sheet;
    expect(presentState(opened).plan.name).toBe('Another');
    expect(countIn(undoGesture(opened).sheet)).toBe(8);
  });

  it('says when there is nothing to undo or redo', () => {
    expect(undoGesture(START)).toMatchObject({ sheet: START, done: false });
    expect(redoGesture(START)).toMatchObject({ sheet: START, done: false });
  });
});

describe('row gestures', () => {
  const names = (sheet: SheetHistory) => presentState(sheet).plan.scenarios.map((scenario) => scenario.name);
  const done = (gesture: { command: Parameters<typeof performCommand>[1]; said: string }) =>
    performCommand(START, gesture.command, gesture.said);

  it('copy a row right under it, under a name of its own', () => {
    const gesture = duplicateScenario(DEMO_PLAN, 'three-shared');
    const copied = done(gesture).sheet;
    expect(names(copied)[2]).toBe('Three on one pump 2');
    expect(gesture.goTo).toBe(presentState(copied).plan.scenarios[2]?.id);
  });

  it('add a row that starts out as today', () => {
    const gesture = addScenarioLikeToday(DEMO_PLAN);
    const added = presentState(done(gesture).sheet).plan;
    const today = scenarioOf(added, 'today');
    expect(scenarioOf(added, gesture.goTo)).toEqual({ ...today, id: gesture.goTo, name: 'Scenario 2' });
  });

  it('add a row at the end, or right under another, but never above today', () => {
    expect(names(done(addScenarioLikeToday(DEMO_PLAN)).sheet).at(-1)).toBe('Scenario 2');
    expect(names(done(insertScenarioBelow(DEMO_PLAN, 'three-shared')).sheet)[2]).toBe('Scenario 2');
    expect(names(done(addScenarioLikeToday(DEMO_PLAN, 0)).sheet)[1]).toBe('Scenario 2');
  });

  it('move several rows at once', () => {
    const gesture = moveScenariosBy(DEMO_PLAN, ['three-shared', 'four-shared'], 1);
    expect(gesture?.said).toBe('2 scenarios moved down.');
    expect(gesture && names(done(gesture).sheet).slice(0, 4)).toEqual([
      'Today',
      'Six on one pump',
      'Three on one pump',
      'Four on one pump',
    ]);
    expect(moveScenariosBy(DEMO_PLAN, ['six-groups', 'four-candy'], 1)).toBeNull();
  });

  it('move a row past the next one on screen, over those that are filtered away', () => {
    const shown = ['today', 'three-shared', 'four-candy'];
    const down = moveScenariosBy(DEMO_PLAN, ['three-shared'], 1, shown);
    expect(down && names(done(down).sheet).at(-1)).toBe('Three on one pump');
    const up = moveScenariosBy(DEMO_PLAN, ['four-candy'], -1, shown);
    expect(up && names(done(up).sheet)[1]).toBe('Four, mostly candy');
    expect(moveScenariosBy(DEMO_PLAN, ['four-candy'], 1, shown)).toBeNull();
  });

  it('drop a row where it is without a step', () => {
    expect(moveScenariosTo(DEMO_PLAN, ['four-shared'], 2)).toBeNull();
    expect(moveScenariosTo(DEMO_PLAN, ['four-shared'], 4)?.said).toBe('Four on one pump moved down.');
    expect(moveScenariosTo(DEMO_PLAN, ['four-shared'], 0)?.said).toBe(
      'All rows are now judged against Four on one pump.',
    );
  });

  it('delete several rows and go to the one that takes their place', () => {
    const gesture = deleteScenarios(DEMO_PLAN, ['three-shared', 'four-shared']);
    expect(names(done(gesture).sheet)).toEqual(['Today', 'Six on one pump', 'Six on two pumps', 'Four, mostly candy']);
    expect(gesture.goTo).toBe('six-shared');
  });

  it('move a row, and say when another one becomes the yardstick', () => {
    const up = moveScenariosBy(DEMO_PLAN, ['three-shared'], -1);
    expect(up?.said).toBe('All rows are now judged against Three on one pump.');
    const down = moveScenariosBy(DEMO_PLAN, ['today'], 1);
    expect(down?.said).toBe('All rows are now judged against Three on one pump.');
    expect(moveScenariosBy(DEMO_PLAN, ['four-shared'], 1)?.said).toBe('Four on one pump moved down.');
  });

  it('have nowhere to move the first row up and the last one down', () => {
    expect(moveScenariosBy(DEMO_PLAN, ['today'], -1)).toBeNull();
    expect(moveScenariosBy(DEMO_PLAN, ['four-candy'], 1)).toBeNull();
  });
});
