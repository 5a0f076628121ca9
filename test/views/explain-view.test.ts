import { describe, expect, it } from 'vitest';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import type { WorkContext } from '../../lib/model/workings/working.ts';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { findById } from '../../lib/plan/find-by-id.ts';
import { type ExplainView, explainView } from '../../lib/views/explain-view.ts';
import { inputNote } from '../../lib/views/input-note.ts';
import { preciseText } from '../../lib/views/precise-text.ts';
import { demoResult } from '../model/computed.ts';

const US = { system: 'us', currency: 'USD' } as const;
const CONTEXT: WorkContext = {
  plan: DEMO_PLAN,
  scenario: findById(DEMO_PLAN.scenarios, 'three-shared', 'scenario'),
  result: demoResult('three-shared'),
  today: demoResult('today'),
};

function explained(id: string, trail: readonly number[]): ExplainView {
  return explainView(findById(OUTPUTS, id, 'output'), CONTEXT, trail, US);
}

function lines({ page }: ExplainView): readonly { readonly label: string }[] {
  return page.kind === 'worked' || page.kind === 'counted' ? page.lines : [];
}

/** Opens the first line whose label holds a text, on and on. */
function follow(id: string, ...texts: readonly string[]): ExplainView {
  const trail: number[] = [];
  for (const text of texts) {
    const place = lines(explained(id, trail)).findIndex((line) => line.label.includes(text));
    if (place < 0) throw new Error(`no line "${text}" among ${lines(explained(id, trail)).map((line) => line.label)}`);
    trail.push(place);
  }
  return explained(id, trail);
}

describe('explainView', () => {
  it('begins with the formula in words and letters and the numbers that went in', () => {
    const view = explained('cost.total', []);
    expect(view.crumbs).toEqual(['Cost per batch']);
    expect(view.page).toMatchObject({ kind: 'worked', formula: expect.stringContaining('ingredients') });
    expect(lines(view)).toHaveLength(6);
  });

  it('goes down to an entry of the plan with its unit, origin and place', () => {
    const view = follow('cost.total', 'Ingredients', 'Ingredients a week', 'Strawberr', 'Cost of ingredients');
    expect(view.page.kind).toBe('input');
    if (view.page.kind !== 'input') return;
    const { wetCost } = DEMO_PLAN.products[0] ?? {};
    expect(view.page.note.entered).toBe(`${wetCost?.value} ${wetCost?.unit.replace('money', 'USD')}`);
    expect(view.page.note.origin).toBe(wetCost?.origin);
    expect(view.page.note.place).toContain('Products');
    expect(view.crumbs).toHaveLength(5);
  });

  it('ends at what was counted in the simulated week, with the laws behind it and what it hangs on', () => {
    const view = follow('pumpHours', 'Running time');
    expect(view.page).toMatchObject({ kind: 'counted', where: 'counted in the simulated week' });
    if (view.page.kind !== 'counted') return;
    expect(view.page.sources.some((source) => /\(\d{4}\)/.test(source))).toBe(true);
    expect(view.page.lines.length).toBeGreaterThan(3);
  });

  it('follows the payback through the months of the projection', () => {
    const view = follow(
      'payback',
      'Cumulative cash after',
      'month 5',
      'Earned beyond today',
      'Three on one pump',
      'Sales',
    );
    expect(view.page.kind).toBe('worked');
    expect(lines(view).length).toBeGreaterThan(1);
  });

  it('says why there is no figure', () => {
    const today = { ...CONTEXT, scenario: DEMO_PLAN.scenarios[0] as WorkContext['scenario'], result: CONTEXT.today };
    const { page } = explainView(findById(OUTPUTS, 'npv', 'output'), today, [], US);
    expect(page).toMatchObject({ kind: 'none', why: expect.stringContaining('judged against nothing') });
  });

  it('stops where a way leads no further', () => {
    expect(explained('cost.total', [0, 99]).crumbs).toHaveLength(2);
  });
});

describe('inputNote', () => {
  it('tells a choice of the scenario from a measured fact', () => {
    expect(inputNote(DEMO_PLAN, 'scenarios.1.chambers.0.count', US)).toMatchObject({
      origin: 'your choice',
      value: '3',
    });
    expect(inputNote(DEMO_PLAN, 'scenarios.1.pumpArrangement', US).value).toBe('one shared');
  });

  it('refuses a path that leads to no input', () => {
    expect(() => inputNote(DEMO_PLAN, 'site.nothing', US)).toThrow(RangeError);
  });
});

describe('preciseText', () => {
  it.each([
    [0.0123456, 'count', '0.012346'],
    [12.3456, 'money', '$12.35'],
    [0.673829, 'money', '$0.67383'],
    [1234.5, 'money', '$1,234.50'],
    [3, 'count', '3'],
    [0.1 + 0.2, 'count', '0.3'],
    [27.1, 'count', '27.1'],
    [0.5, 'money', '$0.50'],
    [2e-8, 'permeability', '0.00000002 s'],
    [3600, 'time', '1 h'],
  ] as const)('writes %d as a %s in about five digits', (value, dimension, text) => {
    expect(preciseText(value, dimension, US)).toBe(text);
  });
});
