import { describe, expect, it } from 'vitest';
import { evaluateText } from '../../lib/headless/evaluate-text.ts';
import { findingLines } from '../../lib/headless/finding-lines.ts';
import type { ResultsJson, ScenarioJson } from '../../lib/headless/results-json.ts';
import { findBottleneck } from '../../lib/insight/find-bottleneck.ts';
import { OUTPUTS } from '../../lib/model/outputs.ts';
import type { Plan } from '../../lib/plan/plan-types.ts';
import { baseUnit } from '../../lib/units/convert.ts';
import { computed, returnOf } from '../model/computed.ts';
import { smallPlan } from '../model/edited-plan.ts';
import { editedDemo, type Loose, textOf } from '../plan/edited-demo.ts';

function resultsOf(plan: Plan): ResultsJson {
  const results = evaluateText('plan.json', textOf(plan), null);
  if (!results.ok) throw new Error(JSON.stringify(results.error));
  return results.value;
}

function linesOf(text: string): string {
  const results = evaluateText('plan.json', text, null);
  return results.ok ? '' : findingLines(results.error).join('\n');
}

function spoilt(edit: (document: Loose) => void): string {
  return textOf(editedDemo(edit));
}

type Computed = Extract<ScenarioJson, { kind: 'computed' }>;

const PLAN = smallPlan();
const RESULTS = resultsOf(PLAN);
const [TODAY, TWO] = RESULTS.scenarios as [Computed, Computed];

describe('the results of a plan', () => {
  it('say what they are, of which plan, in which money, and hold every scenario in order', () => {
    expect(RESULTS).toMatchObject({ format: 'rimeplan-results', version: 1, plan: PLAN.name, currency: 'USD' });
    expect(RESULTS.scenarios.map(({ id, name, kind }) => [id, name, kind])).toEqual([
      ['today', 'Today', 'computed'],
      ['two', 'Two on one pump', 'computed'],
    ]);
  });

  it('hold every quantity of the register as the engine gives it, with its base unit', () => {
    for (const shown of [TODAY, TWO]) {
      const result = computed(PLAN, shown.id);
      expect(Object.keys(shown.outputs)).toEqual(OUTPUTS.map((output) => output.id));
      for (const output of OUTPUTS) {
        expect(shown.outputs[output.id]).toEqual({ value: output.read(result), unit: baseUnit(output.dimension) });
      }
    }
  });

  it('hold cost, capital, return, cover and warnings as the engine gives them', () => {
    const result = computed(PLAN, 'two');
    const { payback, discountedPayback, rateOfReturn, cumulative } = returnOf(result);
    expect(TWO).toMatchObject({ payback, discountedPayback, rateOfReturn });
    expect(TWO.cumulativeCash).toEqual(cumulative);
    expect(TWO.coverByYear).toEqual(result.finance.coverByYear);
    expect(TWO.cost).toEqual(result.cost.lines);
    expect(TWO.capital).toEqual(result.capital);
    expect(TWO.warnings).toEqual(result.warnings);
  });

  it('hold where it jams', () => {
    expect({ ...TWO.bottleneck, scenarioId: 'two' }).toEqual(findBottleneck(PLAN, 'two'));
    expect(Object.keys(TWO.bottleneck ?? {}).sort()).toEqual([
      'gainShare',
      'lastChamberAdds',
      'outputPerChamber',
      'reliefs',
      'resource',
      'sharedOutputs',
      'sharedPumpJams',
      'thresholds',
      'yardstick',
    ]);
  });

  it('judge today against nothing', () => {
    expect(TODAY).toMatchObject({ payback: null, discountedPayback: null, rateOfReturn: null, cumulativeCash: null });
  });

  it('come back from JSON as they were: nothing in them is not a number or without end', () => {
    expect(JSON.parse(JSON.stringify(RESULTS))).toEqual(RESULTS);
  });

  it('are of the one scenario asked for; one that cannot run is refused, with why, and is no fault of the plan', () => {
    const late = smallPlan((document) => {
      document.scenarios[1].purchaseMonth = 90;
    });
    const started: string[] = [];
    const results = evaluateText('plan.json', textOf(late), 'two', ({ id }) => started.push(id));
    const scenarios = results.ok ? results.value.scenarios : [];
    expect(scenarios).toEqual([{ id: 'two', name: 'Two on one pump', kind: 'refused', findings: expect.any(Array) }]);
    expect(JSON.stringify(scenarios)).toContain('The purchase comes after the 84 months that are looked ahead.');
    expect(started).toEqual(['two']);
  });
});

describe('a plan that is none', () => {
  it.each([
    ['', 'plan.json: The file is empty.'],
    ['{"format": NaN}', 'plan.json (line 1, column 12): The file cannot be read as a plan'],
    ['{"format":', 'The file cannot be read as a plan'],
    ['[]', 'plan.json: The file is no plan of this planner.'],
    [' '.repeat(5_000_001), 'plan.json (5.0 MB): The file has 5.0 MB; a plan has 5.0 MB at most.'],
    [
      spoilt((document) => {
        document.version = 99;
      }),
      'plan.json (version 99): The plan was saved by a newer planner',
    ],
    [
      spoilt((document) => {
        document.pumps[0].speed.unit = 'kg';
      }),
      'pumps.0.speed',
    ],
    [
      spoilt((document) => {
        document.products[2].load.value = -7;
      }),
      'products.2.load',
    ],
    [
      spoilt((document) => {
        delete document.crew.wage;
      }),
      'crew.wage ((missing))',
    ],
  ])('is told in plain words: case %#', (text, expected) => {
    expect(linesOf(text)).toContain(expected);
  });

  it('tells every fault of it, not the first alone', () => {
    const text = spoilt((document) => {
      document.pumps[0].speed.unit = 'kg';
      document.products[2].load.value = -7;
    });
    expect(linesOf(text).split('\n')).toHaveLength(2);
  });
});

describe('findingLines', () => {
  it('keeps to one line each, whatever a file holds', () => {
    const finding = { severity: 'error', field: 'a', value: 'x\ny\u001b[31m', problem: 'P.', remedy: 'R.' } as const;
    expect(findingLines([finding])).toEqual(['a (x y [31m): P. R.']);
  });
});
