import { describe, expect, it } from 'vitest';
import { applyCommand } from '../../../lib/plan/commands/apply-command.ts';
import type { Command } from '../../../lib/plan/commands/command.ts';
import { commandLabel } from '../../../lib/plan/commands/command-label.ts';
import { perform } from '../../../lib/plan/commands/perform.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { startHistory, undo } from '../../../lib/plan/history.ts';
import type { LogEntry, Plan, Scenario } from '../../../lib/plan/plan-types.ts';
import type { Finding } from '../../../lib/result.ts';

function applied(command: Command, plan: Plan = DEMO_PLAN): Plan {
  const result = applyCommand(plan, command);
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

function refused(command: Command, plan: Plan = DEMO_PLAN): readonly Finding[] {
  const result = applyCommand(plan, command);
  if (result.ok) throw new Error('the command should have been refused');
  return result.error;
}

function ids(plan: Plan): readonly string[] {
  return plan.scenarios.map((scenario) => scenario.id);
}

const LOGGED: LogEntry = {
  kind: 'pressureRise',
  id: 'p1',
  date: '2025-05-04',
  chamber: 'mid',
  from: 20,
  to: 50,
  minutes: 10,
  note: '',
};

describe('commands on scenarios', () => {
  it('set several fields as one gesture and leave other scenarios the same objects', () => {
    const plan = applied({
      kind: 'setScenarioFields',
      changes: [
        { scenario: 'three-shared', field: 'purchaseMonth', value: 6 },
        { scenario: 'three-shared', field: 'chambers', value: [{ chamber: 'large', count: 3 }] },
        { scenario: 'four-shared', field: 'pumpArrangement', value: 'own' },
      ],
    });
    expect(plan.scenarios[1]).toMatchObject({ purchaseMonth: 6, chambers: [{ chamber: 'large', count: 3 }] });
    expect(plan.scenarios[2]?.pumpArrangement).toBe('own');
    expect(plan.scenarios[0]).toBe(DEMO_PLAN.scenarios[0]);
    expect(plan.products).toBe(DEMO_PLAN.products);
  });

  it('refuse a value that no plan may hold, all or nothing', () => {
    const findings = refused({
      kind: 'setScenarioFields',
      changes: [
        { scenario: 'today', field: 'note', value: 'fine' },
        { scenario: 'today', field: 'purchaseMonth', value: -1 },
      ],
    });
    expect(findings.map((finding) => finding.field)).toEqual(['scenarios.0.purchaseMonth']);
  });

  it('copy a scenario right after the original', () => {
    const plan = applied({ kind: 'addScenario', from: 'three-shared', id: 'new', name: 'Another' });
    expect(ids(plan).slice(0, 4)).toEqual(['today', 'three-shared', 'new', 'four-shared']);
    expect(plan.scenarios[2]).toEqual({ ...DEMO_PLAN.scenarios[1], id: 'new', name: 'Another' });
    expect(refused({ kind: 'addScenario', from: 'today', id: 'four-shared', name: 'X' })[0]?.problem).toContain(
      'Two entries',
    );
  });

  it('remove scenarios but never today', () => {
    expect(ids(applied({ kind: 'removeScenarios', ids: ['six-groups', 'four-candy'] }))).toHaveLength(4);
    expect(refused({ kind: 'removeScenarios', ids: ['four-candy', 'today'] })[0]?.remedy).toContain('to the top');
    expect(refused({ kind: 'removeScenarios', ids: ['gone'] })[0]?.problem).toContain('no scenario "gone"');
  });

  it.each([
    [0, 'four-candy', 0],
    [99, 'three-shared', 5],
    [-3, 'six-shared', 0],
    [2, 'three-shared', 2],
  ])('move to %d takes %s to place %d', (position, id, place) => {
    const plan = applied({ kind: 'moveScenarios', ids: [id], position });
    expect(ids(plan).indexOf(id)).toBe(place);
    expect([...ids(plan)].sort()).toEqual([...ids(DEMO_PLAN)].sort());
  });

  it('give back the very same plan when a scenario is moved to where it is', () => {
    expect(applied({ kind: 'moveScenarios', ids: ['four-shared'], position: 2 })).toBe(DEMO_PLAN);
  });

  it('move several in the order they have', () => {
    const plan = applied({ kind: 'moveScenarios', ids: ['six-groups', 'three-shared'], position: 2 });
    expect(ids(plan)).toEqual(['today', 'four-shared', 'three-shared', 'six-groups', 'six-shared', 'four-candy']);
  });

  it('copy a scenario to a place of its own', () => {
    const plan = applied({ kind: 'addScenario', from: 'today', id: 'new', name: 'Another', position: 4 });
    expect(ids(plan).indexOf('new')).toBe(4);
  });

  it('take in a scenario made elsewhere, at the end or at a place, but never as today', () => {
    const scenario = { ...(DEMO_PLAN.scenarios[2] as Scenario), id: 'found', name: 'Found' };
    const plan = applied({ kind: 'insertScenario', scenario });
    expect(plan.scenarios.at(-1)).toBe(scenario);
    expect(plan.scenarios.slice(0, -1)).toEqual(DEMO_PLAN.scenarios);
    expect(ids(applied({ kind: 'insertScenario', scenario, position: 0 })).indexOf('found')).toBe(1);
    expect(refused({ kind: 'insertScenario', scenario: { ...scenario, id: 'today' } })).toHaveLength(1);
    expect(refused({ kind: 'insertScenario', scenario: { ...scenario, pump: 'gone' } })).toHaveLength(1);
  });

  it('rename, but not to nothing', () => {
    expect(applied({ kind: 'renameScenario', id: 'today', name: 'Now' }).scenarios[0]?.name).toBe('Now');
    expect(refused({ kind: 'renameScenario', id: 'today', name: ' ' })[0]?.field).toBe('scenarios.0.name');
  });

  it.each<Command>([
    { kind: 'renameScenario', id: 'gone', name: 'X' },
    { kind: 'moveScenarios', ids: ['gone'], position: 0 },
    { kind: 'addScenario', from: 'gone', id: 'x', name: 'X' },
  ])('$kind refuses an unknown scenario', (command) => {
    expect(refused(command)[0]?.value).toBe('gone');
  });
});

describe('commands on values', () => {
  it('change a part of a quantity and keep the rest', () => {
    const plan = applied({
      kind: 'setQuantities',
      changes: [{ path: 'chambers.0.shelfArea', quantity: { value: 1.6 } }],
    });
    expect(plan.chambers[0]?.shelfArea).toEqual({ value: 1.6, unit: 'm²', origin: 'measured' });
    expect(plan.chambers[1]).toBe(DEMO_PLAN.chambers[1]);
  });

  it('bring low and high along when the unit changes', () => {
    const plan = applied({
      kind: 'setQuantities',
      changes: [{ path: 'products.0.price', quantity: { value: 50, unit: 'money/lb' } }],
    });
    const before = DEMO_PLAN.products[0]?.price;
    const { low, high, unit } = plan.products[0]?.price ?? {};
    expect([unit, low, high]).toEqual([
      'money/lb',
      expect.closeTo((before?.low ?? 0) * 0.45359237, 9),
      expect.closeTo((before?.high ?? 0) * 0.45359237, 9),
    ]);
  });

  it('remove the parts that are given as undefined', () => {
    const plan = applied({
      kind: 'setQuantities',
      changes: [{ path: 'products.0.price', quantity: { value: 200, low: undefined, high: undefined } }],
    });
    expect(plan.products[0]?.price).toEqual({
      value: 200,
      unit: 'money/kg',
      origin: 'measured',
      note: 'Market stall and web shop',
    });
  });

  it('empty a field that may be empty, and fill it again', () => {
    const path = 'products.0.weeklyDemand';
    const empty = applied({ kind: 'setQuantities', changes: [{ path, quantity: null }] });
    expect(empty.products[0]?.weeklyDemand).toBeNull();
    const quantity = { value: 9, unit: 'lb/week', origin: 'guess' } as const;
    expect(applied({ kind: 'setQuantities', changes: [{ path, quantity }] }, empty).products[0]?.weeklyDemand).toEqual(
      quantity,
    );
    expect(refused({ kind: 'setQuantities', changes: [{ path: 'products.0.price', quantity: null }] })[0]?.field).toBe(
      'products.0.price',
    );
  });

  it('marks a unit of another kind', () => {
    const findings = refused({
      kind: 'setQuantities',
      changes: [{ path: 'products.0.price', quantity: { unit: 'kg' } }],
    });
    expect(findings[0]).toMatchObject({ field: 'products.0.price', value: 'kg' });
  });

  it('set flags, choices, texts and lists', () => {
    const plan = applied({
      kind: 'setValues',
      changes: [
        { path: 'crew.guaranteed', value: true },
        { path: 'products.1.form', value: 'poured' },
        { path: 'site.shopName', value: 'Another larder' },
        { path: 'crew.patterns.0.shifts.0.people', value: 3 },
      ],
    });
    expect([plan.crew.guaranteed, plan.products[1]?.form, plan.site.shopName]).toEqual([
      true,
      'poured',
      'Another larder',
    ]);
    expect(plan.crew.patterns[0]?.shifts[0]?.people).toBe(3);
    expect(plan.crew.patterns[1]).toBe(DEMO_PLAN.crew.patterns[1]);
  });

  it.each([
    '',
    'nowhere',
    'products.9.load',
    'products.-1.load',
    'products.length',
    '__proto__.x',
    'site.__proto__',
    'site.toString',
  ])('refuse the path %j', (path) => {
    expect(refused({ kind: 'setValues', changes: [{ path, value: 1 }] })[0]?.problem).toBe(
      'There is no such field in the plan.',
    );
  });

  it('set and remove the freezer', () => {
    const without = applied({ kind: 'setFreezer', freezer: null });
    expect(without.freezer).toBeNull();
    expect(applied({ kind: 'setFreezer', freezer: DEMO_PLAN.freezer }, without)).toEqual(DEMO_PLAN);
  });
});

describe('commands on catalogues and log', () => {
  it('add a copy and remove it again', () => {
    const more = applied({ kind: 'addItem', list: 'patterns', from: 'days', id: 'nights', name: 'Nights' });
    expect(more.crew.patterns.map((pattern) => pattern.id)).toEqual(['days', 'two-shifts', 'nights']);
    expect(applied({ kind: 'removeItem', list: 'patterns', id: 'nights' }, more)).toEqual(DEMO_PLAN);
    expect(applied({ kind: 'removeItem', list: 'chambers', id: 'large' }).chambers).toHaveLength(1);
  });

  it('refuse to remove what is in use, and say where', () => {
    const finding = refused({ kind: 'removeItem', list: 'pumps', id: 'small' })[0];
    expect(finding).toMatchObject({ field: 'pumps.0', problem: 'This pump type is in use: Today.' });
    const logged = applied({ kind: 'addLogEntries', entries: [{ ...LOGGED, chamber: 'large' }] });
    expect(refused({ kind: 'removeItem', list: 'chambers', id: 'large' }, logged)[0]?.problem).toContain(
      'the batch log',
    );
  });

  it.each<Command>([
    { kind: 'addItem', list: 'hoses', from: 'gone', id: 'x', name: 'X' },
    { kind: 'removeItem', list: 'patterns', id: 'gone' },
  ])('$kind refuses what is not there', (command) => {
    expect(refused(command)[0]?.value).toBe('gone');
  });

  it('log and forget', () => {
    const logged = applied({ kind: 'addLogEntries', entries: [LOGGED, { ...LOGGED, id: 'p2' }] });
    expect(logged.batchLog).toHaveLength(DEMO_PLAN.batchLog.length + 2);
    expect(applied({ kind: 'removeLogEntries', ids: ['p1', 'p2'] }, logged)).toEqual(DEMO_PLAN);
    expect(refused({ kind: 'addLogEntries', entries: [LOGGED, LOGGED] })[0]?.field).toBe(
      `batchLog.${DEMO_PLAN.batchLog.length + 1}.id`,
    );
  });
});

describe('perform', () => {
  it('makes one step of a gesture however many cells it touches', () => {
    const changes = DEMO_PLAN.scenarios.map(
      (scenario) => ({ scenario: scenario.id, field: 'purchaseMonth', value: 4 }) as const,
    );
    const result = perform(startHistory(DEMO_PLAN), { kind: 'setScenarioFields', changes });
    if (!result.ok) throw new Error('refused');
    expect(result.value.past.map((step) => step.label)).toEqual(['change 6 cells']);
    expect(undo(result.value).present).toBe(DEMO_PLAN);
  });

  it('leaves the history alone when a command is refused', () => {
    expect(perform(startHistory(DEMO_PLAN), { kind: 'removeScenarios', ids: ['today'] }).ok).toBe(false);
  });

  it.each<[Command, string]>([
    [{ kind: 'setQuantities', changes: [{ path: 'a', quantity: null }] }, 'change cell'],
    [{ kind: 'addScenario', from: 'a', id: 'b', name: 'Bigger' }, 'add Bigger'],
    [{ kind: 'insertScenario', scenario: DEMO_PLAN.scenarios[1] as Scenario }, 'add Three on one pump'],
    [{ kind: 'removeScenarios', ids: ['a', 'b'] }, 'remove 2 scenarios'],
    [{ kind: 'moveScenarios', ids: ['a'], position: 1 }, 'move scenario'],
    [{ kind: 'renameScenario', id: 'a', name: 'B' }, 'rename to B'],
    [{ kind: 'addItem', list: 'pumps', from: 'a', id: 'b', name: 'B' }, 'add pump type B'],
    [{ kind: 'removeItem', list: 'products', id: 'a' }, 'remove product'],
    [{ kind: 'setFreezer', freezer: null }, 'remove freezer'],
    [{ kind: 'addLogEntries', entries: [LOGGED, LOGGED] }, 'log 2 entries'],
    [{ kind: 'removeLogEntries', ids: ['a'] }, 'remove entry from the log'],
  ])('labels %j', (command, label) => {
    expect(commandLabel(command)).toBe(label);
  });
});
