import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { LIMITS } from '../../lib/plan/limits.ts';
import { parsePlan } from '../../lib/plan/parse-plan.ts';
import type { PlanFileError } from '../../lib/plan/plan-file-error.ts';
import { serialisePlan } from '../../lib/plan/serialise-plan.ts';
import type { Finding } from '../../lib/result.ts';
import { editedDemo, type Loose, textOf } from './edited-demo.ts';

const DEMO_TEXT = serialisePlan(DEMO_PLAN);

function errorOf(text: string): PlanFileError {
  const result = parsePlan(text);
  if (result.ok) throw new Error('the text should not have been a plan');
  return result.error;
}

function findingsOf(edit: (document: Loose) => void): readonly Finding[] {
  const error = errorOf(textOf(editedDemo(edit)));
  if (error.kind !== 'invalid') throw new Error(`expected findings, got ${error.kind}`);
  return error.findings;
}

describe('parsePlan on whole files', () => {
  it('reads a plan back as it was', () => {
    const result = parsePlan(DEMO_TEXT);
    expect(result).toEqual({ ok: true, value: DEMO_PLAN });
  });

  it('takes a byte order mark and Windows line ends', () => {
    expect(parsePlan(`\uFEFF${DEMO_TEXT.replaceAll('\n', '\r\n')}`).ok).toBe(true);
  });

  it.each(['', ' \n\t', '\uFEFF'])('says that %j is empty', (text) => {
    expect(errorOf(text)).toEqual({ kind: 'empty' });
  });

  it('refuses a file beyond the limit by its bytes, not its letters', () => {
    const letters = 'é'.repeat(LIMITS.bytes / 2);
    expect(errorOf(`"${letters}"`)).toEqual({ kind: 'tooLarge', bytes: LIMITS.bytes + 2, limit: LIMITS.bytes });
    expect(errorOf(' '.repeat(LIMITS.bytes + 1)).kind).toBe('tooLarge');
  });

  it('points at the line and column where JSON breaks', () => {
    const text = DEMO_TEXT.replace('"version": 1,', '"version": 1');
    expect(errorOf(text)).toEqual({
      kind: 'notJson',
      line: 4,
      column: 3,
      message: 'a comma or a closing bracket was expected here',
    });
  });

  it.each([
    '[]',
    'null',
    '3',
    '"x"',
    '{}',
    '{"format":"something-else","version":1}',
    '{"format":"rimeplan-plan","version":"1"}',
  ])('says that %s is not a plan', (text) => {
    expect(errorOf(text)).toEqual({ kind: 'notAPlan' });
  });

  it('says when the file comes from a newer planner', () => {
    expect(errorOf('{"format":"rimeplan-plan","version":7}')).toEqual({ kind: 'versionTooNew', found: 7, known: 1 });
  });

  it.each(['__proto__', 'constructor', 'prototype'])('refuses a field called %s anywhere', (key) => {
    const text = DEMO_TEXT.replace('"shelfArea":', `"${key}": {"polluted": true}, "shelfArea":`);
    const error = errorOf(text);
    expect(error.kind).toBe('invalid');
    if (error.kind === 'invalid') expect(error.findings.map((finding) => finding.value)).toContain(key);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it('refuses nesting without end and does not fall over it', () => {
    const deep = `{"format":"rimeplan-plan","version":1,"name":${'['.repeat(200_000)}${']'.repeat(200_000)}}`;
    const error = errorOf(deep);
    expect(error.kind === 'invalid' && error.findings[0]?.problem).toBe(
      'Fields are nested far deeper than any plan needs.',
    );
  });

  it('never throws, whatever the text', () => {
    fc.assert(fc.property(fc.string({ maxLength: 200 }), (text) => void parsePlan(text)));
    fc.assert(fc.property(fc.json(), (text) => void parsePlan(text)));
  });

  it('never throws on a plan with one part replaced, and never passes a number that is not finite', () => {
    const paths = leafPaths(DEMO_PLAN);
    const oddities = fc.oneof(fc.jsonValue(), fc.constantFrom(null, -1e308, 1e308, '', 'NaN', [], {}, '__proto__'));
    fc.assert(
      fc.property(fc.nat(paths.length - 1), oddities, (at, value) => {
        const document = editedDemo((plan) => setAt(plan, paths[at] ?? [], value));
        const result = parsePlan(textOf(document));
        if (!result.ok && result.error.kind === 'invalid') expect(result.error.findings.length).toBeGreaterThan(0);
      }),
      { numRuns: 400 },
    );
    expect(errorOf(DEMO_TEXT.replace('"value": 1.5', '"value": 1e999')).kind).toBe('invalid');
  });
});

function leafPaths(value: unknown, path: readonly string[] = []): (readonly string[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, child]) => leafPaths(child, [...path, key]))].filter(
    (found) => found.length > 0,
  );
}

function setAt(root: Loose, path: readonly string[], value: unknown): void {
  const parent = path.slice(0, -1).reduce((node, key) => node[key], root);
  parent[path.at(-1) ?? ''] = value;
}

describe('parsePlan on wrong values', () => {
  // Each edit, the fields it must mark, and a piece of what is said.
  const cases: readonly [string, (plan: Loose) => void, readonly string[], string][] = [
    ['a value out of range', (p) => (p.chambers[0].shelfArea.value = -1), ['chambers.0.shelfArea'], 'too low'],
    [
      'a unit of another kind',
      (p) => (p.chambers[0].shelfArea.unit = 'kg'),
      ['chambers.0.shelfArea'],
      'Shelf area: the unit is not one',
    ],
    [
      'an unknown origin',
      (p) => (p.hoses[0].length.origin = 'rumour'),
      ['hoses.0.length'],
      'where it came from is not one',
    ],
    [
      'text for a number',
      (p) => (p.hoses[0].length.value = '2'),
      ['hoses.0.length'],
      'Length: the number should be a number',
    ],
    [
      'a low above the value',
      (p) => (p.products[0].price.low = 999),
      ['products.0.price.low'],
      'above the likely value',
    ],
    ['a missing quantity', (p) => delete p.pumps[0].speed, ['pumps.0.speed'], 'Rated speed is missing'],
    [
      'none where there must be one',
      (p) => (p.pumps[0].speed = null),
      ['pumps.0.speed'],
      'Rated speed should be a number with its unit',
    ],
    ['an unknown field', (p) => (p.pumps[0].colour = 'red'), ['pumps.0.colour'], 'no field called "colour"'],
    ['an unknown form', (p) => (p.products[0].form = 'dust'), ['products.0.form'], 'Form is not one of the choices'],
    [
      'a flag that is none',
      (p) => (p.products[0].preFrozen = 'yes'),
      ['products.0.preFrozen'],
      'should be true or false',
    ],
    ['a repeated id', (p) => p.hoses.push(p.hoses[0]), ['hoses.2.id'], 'Two entries have the id'],
    ['an id that objects own', (p) => (p.products[1].id = 'valueOf'), ['products.1.id'], 'This id cannot be used'],
    [
      'an unknown product',
      (p) => (p.scenarios[0].mix[0].product = 'x'),
      ['scenarios.0.mix.0.product'],
      'no product with the id "x"',
    ],
    [
      'an unknown chamber',
      (p) => (p.scenarios[0].chambers[0].chamber = 'x'),
      ['scenarios.0.chambers.0.chamber'],
      'no chamber type',
    ],
    ['an unknown pump', (p) => (p.scenarios[0].pump = 'x'), ['scenarios.0.pump'], 'no pump type'],
    [
      'an unknown roughing pump',
      (p) => (p.scenarios[0].roughingPump = 'x'),
      ['scenarios.0.roughingPump'],
      'no pump type',
    ],
    ['an unknown hose', (p) => (p.scenarios[0].hose = 'x'), ['scenarios.0.hose'], 'no hose'],
    ['an unknown pattern', (p) => (p.scenarios[0].pattern = 'x'), ['scenarios.0.pattern'], 'no shift pattern'],
    ['shares that do not sum', (p) => (p.scenarios[0].mix[0].share = 30), ['scenarios.0.mix'], 'sum to 95 %'],
    [
      'a product twice in a mix',
      (p) => (p.scenarios[0].mix[1].product = 'strawberries'),
      ['scenarios.0.mix'],
      'stands twice',
    ],
    ['no chamber', (p) => (p.scenarios[0].chambers[0].count = 0), ['scenarios.0.chambers'], 'has no chamber'],
    [
      'a chamber type twice',
      (p) => p.scenarios[0].chambers.push({ chamber: 'mid', count: 1 }),
      ['scenarios.0.chambers'],
      'stands twice',
    ],
    [
      'half a chamber',
      (p) => (p.scenarios[0].chambers[0].count = 1.5),
      ['scenarios.0.chambers.0.count'],
      'whole number',
    ],
    [
      'too many chambers',
      (p) => p.scenarios[0].chambers.push({ chamber: 'large', count: 24 }),
      ['scenarios.0.chambers'],
      '26 chambers',
    ],
    [
      'no roughing pump',
      (p) => (p.scenarios[0].startPractice = 'roughing'),
      ['scenarios.0.roughingPump'],
      'none is chosen',
    ],
    ['more than 100 % of food', (p) => (p.products[0].fat.value = 20), ['products.0.water'], 'sum to 112.87 %'],
    [
      'a target that is never met',
      (p) => (p.products[0].targetMoisture.value = 0.01),
      ['products.0.targetMoisture'],
      'never be done',
    ],
    [
      'a trap that defies its load',
      (p) => (p.chambers[0].trapRatedTemperature.value = -60),
      ['chambers.0.trapRatedTemperature'],
      'no warmer',
    ],
    [
      'a curve of one point',
      (p) => (p.pumps[0].speedTable = [{ pressure: 1, speed: 2 }]),
      ['pumps.0.speedTable'],
      'cannot be followed',
    ],
    [
      'a curve that goes back',
      (p) => {
        p.pumps[0].speedTable = [
          { pressure: 10, speed: 2 },
          { pressure: 1, speed: 2 },
        ];
      },
      ['pumps.0.speedTable'],
      'cannot be followed',
    ],
    [
      'a shift that ends first',
      (p) => (p.crew.patterns[0].shifts[0].end = 6),
      ['crew.patterns.0.shifts.0.end'],
      'ends before it starts',
    ],
    [
      'a weekday twice',
      (p) => (p.crew.patterns[0].shifts[0].weekdays = [1, 1]),
      ['crew.patterns.0.shifts.0.weekdays'],
      'stands twice',
    ],
    [
      'an eighth weekday',
      (p) => (p.crew.patterns[0].shifts[0].weekdays = [7]),
      ['crew.patterns.0.shifts.0.weekdays.0'],
      'outside what is allowed',
    ],
    [
      'grace as long as the loan',
      (p) => {
        p.financing.loans[0].graceMonths.value = 57;
        p.financing.loans[0].term.value = 60;
      },
      ['financing.loans.0.term'],
      'the whole term',
    ],
    [
      'loans on more than the whole purchase',
      (p) => (p.financing.loans = [p.financing.loans[0], { ...p.financing.loans[0], id: 'second' }]),
      ['financing.loans.1.share'],
      '160 %',
    ],
    [
      'an owner at the chambers more than at work',
      (p) => (p.crew.ownerAtChambers.value = 31),
      ['crew.ownerAtChambers'],
      'more hours than the owner works',
    ],
    [
      'a price that ends when it starts',
      (p) => (p.site.priceBands[1].end = 23),
      ['site.priceBands.1.end'],
      'ends when it starts',
    ],
    [
      'a product that no month wants',
      (p) => {
        for (const month of ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'])
          p.products[1][`season${month}`] = 0;
      },
      ['products.1.seasonJan'],
      'no demand in any month',
    ],
    ['a stage after nothing', (p) => (p.scenarios[2].after = 'gone'), ['scenarios.2.after'], 'no scenario'],
    [
      'stages in a circle',
      (p) => {
        p.scenarios[2].after = 'six-shared';
        p.scenarios[3].after = 'four-shared';
      },
      ['scenarios.2.after', 'scenarios.3.after'],
      'which comes after it',
    ],
    ['a currency in words', (p) => (p.site.currency = 'dollars'), ['site.currency'], 'three-letter code'],
    ['an empty name', (p) => (p.name = '  '), ['name'], 'name is empty'],
    ['no scenarios', (p) => (p.scenarios = []), ['scenarios'], 'too few entries'],
    ['a list that is none', (p) => (p.products = {}), ['products'], 'should be a list'],
    [
      'a log of an unknown kind',
      (p) => (p.batchLog = [{ kind: 'dream' }]),
      ['batchLog.0.kind'],
      'is of no kind known here',
    ],
  ];

  it.each(cases)('marks %s', (_name, edit, fields, words) => {
    const findings = findingsOf(edit);
    expect([...new Set(findings.map((finding) => finding.field))]).toEqual(fields);
    expect(findings.some((finding) => finding.problem.includes(words))).toBe(true);
    for (const finding of findings) expect(finding.remedy).toMatch(/\.$/);
  });

  it('collects all that is wrong and shows each value', () => {
    const findings = findingsOf((plan) => {
      plan.chambers[0].leak.value = 99;
      plan.products[2].price.value = -4;
      plan.site.unitSystem = 'metric';
    });
    expect(findings.map((finding) => [finding.field, finding.value])).toEqual([
      ['site.unitSystem', 'metric'],
      ['products.2.price', '-4 money/kg'],
      ['chambers.0.leak', '99 Pa·m³/s'],
    ]);
  });
});

describe('the batch log', () => {
  const batch = {
    kind: 'batch',
    id: 'b1',
    date: '2024-02-29',
    chamber: 'mid',
    product: 'strawberries',
    wet: 10.5,
    dry: 1.1,
    hours: 26,
    highestPressure: null,
    note: '',
  };
  const test = {
    kind: 'pressureRise',
    id: 't1',
    date: '2025-06-01',
    chamber: 'mid',
    from: 20,
    to: 44,
    minutes: 10,
    note: 'valve shut',
  };

  it('takes batches and pressure-rise tests', () => {
    expect(parsePlan(textOf(editedDemo((plan) => (plan.batchLog = [batch, test])))).ok).toBe(true);
  });

  it.each([
    ['2025-02-29', false],
    ['2024-02-29', true],
    ['2025-13-01', false],
    ['1 May', false],
  ])('takes the date %s: %s', (date, ok) => {
    expect(parsePlan(textOf(editedDemo((plan) => (plan.batchLog = [{ ...batch, date }])))).ok).toBe(ok);
  });

  it('marks swapped readings and unknown machines', () => {
    const findings = findingsOf((plan) => {
      plan.batchLog = [
        { ...batch, dry: 20 },
        { ...test, from: 90 },
        { ...test, id: 't2', chamber: 'gone' },
      ];
    });
    expect(findings.map((finding) => finding.field)).toEqual(['batchLog.2.chamber', 'batchLog.0.dry', 'batchLog.1.to']);
  });
});
