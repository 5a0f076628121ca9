import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyCommand } from '../../../lib/plan/commands/apply-command.ts';
import { DEMO_PLAN } from '../../../lib/plan/demo-plan.ts';
import { exportLog } from '../../../lib/plan/log-text/export-log.ts';
import { importLog, type LogImport } from '../../../lib/plan/log-text/import-log.ts';
import type { LogEntry, Plan } from '../../../lib/plan/plan-types.ts';

const EMPTY: Plan = { ...DEMO_PLAN, batchLog: [] };
const SI: Plan = { ...EMPTY, site: { ...EMPTY.site, unitSystem: 'si' } };

function read(text: string, plan: Plan = EMPTY, order: 'day' | 'month' | null = null): LogImport {
  const result = importLog(text, plan, order);
  if (!result.ok) throw new Error(`${result.error.problem} ${result.error.remedy}`);
  return result.value;
}

function only(found: LogImport): LogEntry {
  expect(found.leftOut).toEqual([]);
  expect(found.entries).toHaveLength(1);
  return found.entries[0] as LogEntry;
}

const HEAD = 'date,chamber,product,wet kg,dry kg,hours,highest pressure mTorr,note';

describe('importLog: what it takes', () => {
  it('reads a plain row', () => {
    expect(only(read(`${HEAD}\n2026-05-03,Mid-size chamber,sweetcorn,11.2,2.8,16.5,500,"first, ever"`))).toEqual({
      kind: 'batch',
      id: 'log-1',
      date: '2026-05-03',
      chamber: 'mid',
      product: 'sweetcorn',
      wet: 11.2,
      dry: 2.8,
      hours: 16.5,
      highestPressure: expect.closeTo(66.66, 2),
      note: 'first, ever',
    });
  });

  it.each([
    ['wet lb,dry oz', '22.0462,44.0925'],
    ['Wet weight (lbs),Dry weight [oz]', '22.0462,44.0925'],
    ['wet weight in g,DRY in kg', '10000,1.25'],
    ['weight in kg,weight out kg', '10,1.25'],
    ['wet,dry', '10 kg,1250 g'],
  ])('takes units from heads and cells: %s', (heads, figures) => {
    const entry = only(read(`date,product,${heads},time h\n2026-05-03,sweetcorn,${figures},16`));
    expect(entry).toMatchObject({ wet: expect.closeTo(10, 3), dry: expect.closeTo(1.25, 3), hours: 16 });
  });

  it('takes bare figures in the units of the plan and says so', () => {
    const text = 'date,product,wet,dry,time\n2026-05-03,sweetcorn,22,5.5,16';
    expect(only(read(text))).toMatchObject({ wet: expect.closeTo(9.979, 3) });
    expect(only(read(text, SI))).toMatchObject({ wet: 22 });
    expect(read(text).notes.join(' ')).toContain('"wet" says no unit, so bare figures in it are taken as lb.');
  });

  it.each([
    ['16:30', 16.5],
    ['990 min', 16.5],
    ['16.5 h', 16.5],
    ['0.6875 d', 16.5],
  ])('reads %s as hours', (time, hours) => {
    expect(only(read(`date,product,wet kg,dry kg,time\n2026-05-03,sweetcorn,10,2.5,${time}`))).toMatchObject({ hours });
  });

  it('reads decimal commas, and semicolons between cells', () => {
    const text =
      'date;product;wet kg;dry kg;hours\n3.5.2026;Sweetcorn;10,5;2,62;1.016,25\n4.5.2026;Sweetcorn;10,125;2,6;16';
    const { entries, leftOut } = read(text);
    expect(entries[0]).toMatchObject({ wet: 10.125, hours: 16 });
    expect(leftOut[0]).toMatchObject({ line: 2, faults: [{ column: 'hours', value: '1.016,25' }] });
  });

  it('leaves a comma that can be read in two ways out, with both readings', () => {
    const { entries, leftOut } = read('date;product;wet kg;dry kg;hours\n3.5.2026;Sweetcorn;1,125;1;16');
    expect(entries).toEqual([]);
    expect(leftOut[0]?.faults[0]?.remedy).toBe('Write 1125 or 1.125.');
  });

  it('reads pressure-rise tests beside batches', () => {
    const text = 'date,chamber,from mTorr,to mTorr,test minutes\n2026-05-03,mid,200,500,10';
    expect(only(read(text))).toEqual({
      kind: 'pressureRise',
      id: 'log-1',
      date: '2026-05-03',
      chamber: 'mid',
      from: expect.closeTo(26.66, 2),
      to: expect.closeTo(66.66, 2),
      minutes: 10,
      note: '',
    });
  });
});

describe('importLog: dates that can be read two ways', () => {
  const text = `${HEAD}\n5/3/2026,,sweetcorn,11,2.8,16,,`;

  it('are told, and read as the plan’s units suggest or as asked', () => {
    expect(read(text)).toMatchObject({ twoWayDate: '5/3/2026', dateOrder: 'month' });
    expect(read(text, SI)).toMatchObject({ twoWayDate: '5/3/2026', dateOrder: 'day' });
    expect(only(read(text, EMPTY, 'day')).date).toBe('2026-03-05');
  });

  it('are settled by another row that cannot', () => {
    const both = read(`${text}\n15/3/2026,,sweetcorn,11,2.8,16,,`);
    expect(both.twoWayDate).toBeNull();
    expect(both.entries.map((entry) => entry.date)).toEqual(['2026-03-05', '2026-03-15']);
  });
});

describe('importLog: what it leaves out', () => {
  it('names line, column, fault and remedy, all of a row at once', () => {
    const { entries, leftOut } = read(`${HEAD}\n\nsoon,large one,Sweetcon,lots,2.8,,9e9,x`);
    expect(entries).toEqual([]);
    expect(leftOut[0]?.line).toBe(3);
    expect(leftOut[0]?.faults.map((fault) => fault.column)).toEqual([
      'date',
      'chamber',
      'product',
      'wet kg',
      'hours',
      'highest pressure mTorr',
    ]);
    expect(leftOut[0]?.faults[2]?.remedy).toContain('Did you mean "Sweetcorn"?');
    for (const fault of leftOut[0]?.faults ?? []) expect(fault.problem && fault.remedy).toMatch(/\.$|\?/);
  });

  it('notices swapped weights and a pressure that falls', () => {
    const swapped = read(`${HEAD}\n2026-05-03,mid,sweetcorn,2.8,11,16,,`);
    expect(swapped.leftOut[0]?.faults[0]).toMatchObject({
      column: 'dry kg',
      problem: expect.stringContaining('heavier'),
    });
    const fell = read('date,chamber,from Pa,to Pa,minutes\n2026-05-03,mid,60,30,10');
    expect(fell.leftOut[0]?.faults[0]).toMatchObject({ column: 'to Pa' });
  });

  it.each([
    ['', 'nothing to read'],
    ['1;2;3', 'does not name the columns'],
    [HEAD, 'nothing below'],
    ['date,product,wet kg\n2026-05-03,sweetcorn,2', 'no column for "dry kg", "hours"'],
    ['date,wet kg,wet lb,product\n1,2,3,4', 'both give the wet'],
  ])('refuses a table as a whole with words: %j', (text, words) => {
    const result = importLog(text, EMPTY);
    expect(!result.ok && result.error.problem).toContain(words);
  });

  it('says which columns it does not know', () => {
    const { notes } = read('date,product,wet kg,dry kg,hours,cook\n2026-05-03,sweetcorn,11,2.8,16,me');
    expect(notes).toContain('The column "cook" is not known and is left out.');
  });
});

describe('importLog: what the log has already', () => {
  it('is everything, when an export comes back', () => {
    const back = read(exportLog(DEMO_PLAN), DEMO_PLAN);
    expect(back.entries).toEqual([]);
    expect(back.leftOut).toEqual([]);
    expect(back.known).toHaveLength(DEMO_PLAN.batchLog.length);
  });

  it('is counted: a second like batch of one day is new', () => {
    const row = '2026-05-03,mid,sweetcorn,11,2.8,16,,';
    const plan = { ...EMPTY, batchLog: read(`${HEAD}\n${row}`).entries };
    const again = read(`${HEAD}\n${row}\n${row}`, plan);
    expect(again.known.map(({ line }) => line)).toEqual([2]);
    expect(again.entries).toHaveLength(1);
    expect(again.entries[0]?.id).not.toBe(plan.batchLog[0]?.id);
  });

  it('brings an exported log into an empty plan unchanged but for ids', () => {
    const entries = read(exportLog(DEMO_PLAN)).entries;
    const bare = (log: readonly LogEntry[]) => log.map(({ id: _id, ...rest }) => rest);
    expect(bare(entries)).toEqual(bare(DEMO_PLAN.batchLog));
  });
});

describe('importLog of anything at all', () => {
  const cell = fc.oneof(
    fc.string(),
    fc.constantFrom(
      '=1+1',
      '=cmd|calc',
      '__proto__',
      'constructor',
      '2026-05-03',
      'sweetcorn',
      'mid',
      '10',
      '1,5',
      '-3',
      '1e400',
      'NaN',
      '""',
    ),
  );
  const head = fc.constantFrom(
    'date',
    'product',
    'wet kg',
    'dry kg',
    'hours',
    'time',
    'note',
    '__proto__',
    'constructor',
    'chamber',
    'to',
    '',
  );
  const separator = fc.constantFrom(',', ';', '\t');
  const table = fc
    .tuple(
      separator,
      fc.array(head, { minLength: 1, maxLength: 8 }),
      fc.array(fc.array(cell, { maxLength: 9 }), { maxLength: 6 }),
    )
    .map(([sign, heads, rows]) => [heads, ...rows].map((row) => row.join(sign)).join('\n'));

  it('never throws, says why each time, and what it takes the plan takes', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          table,
          table.map((text) => `${HEAD}\n${text}`),
        ),
        (text) => {
          const result = importLog(text, EMPTY);
          if (!result.ok) {
            expect(result.error.problem.length).toBeGreaterThan(5);
            return;
          }
          for (const { faults } of result.value.leftOut) expect(faults.length).toBeGreaterThan(0);
          const applied = applyCommand(EMPTY, { kind: 'addLogEntries', entries: result.value.entries });
          expect(applied.ok).toBe(true);
        },
      ),
      { numRuns: 300 },
    );
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    expect(Object.keys(Object.prototype)).toEqual([]);
  });

  it('takes every good row among bad ones', () => {
    const good = '2026-05-03,mid,sweetcorn,11,2.8,16,,';
    fc.assert(
      fc.property(fc.array(fc.boolean(), { minLength: 1, maxLength: 12 }), (pattern) => {
        const rows = pattern.map((isGood) => (isGood ? good : '2026-05-03,mid,,x,,,,'));
        const { entries, leftOut } = read(`${HEAD}\n${rows.join('\n')}`);
        expect(entries).toHaveLength(pattern.filter(Boolean).length);
        expect(leftOut.map(({ line }) => line)).toEqual(pattern.flatMap((isGood, i) => (isGood ? [] : [i + 2])));
      }),
    );
  });
});
