import { describe, expect, it } from 'vitest';
import { DEMO_PLAN } from '../../lib/plan/demo-plan.ts';
import { parsePlan } from '../../lib/plan/parse-plan.ts';
import { serialisePlan } from '../../lib/plan/serialise-plan.ts';
import { planFileWords } from '../../lib/views/plan-file-words.ts';

function wordsFor(text: string): string[] {
  const parsed = parsePlan(text);
  return parsed.ok ? [] : planFileWords(parsed.error).map((line) => `${line.where}|${line.problem}|${line.remedy}`);
}

describe('planFileWords', () => {
  it('has words and a remedy for every kind of fault', () => {
    const text = serialisePlan(DEMO_PLAN);
    const faults = [
      '',
      '{"a": }',
      '{"a": 1}',
      text.replace('"version": 1', '"version": 99'),
      text.replace('"count": 2', '"count": 200'),
      'x'.repeat(5_000_001),
    ];
    for (const fault of faults) {
      const words = wordsFor(fault);
      expect(words.length).toBeGreaterThan(0);
      for (const line of words) expect(line).toMatch(/^[^|]*\|[^|]+\.\|[^|]+\.$/);
    }
  });

  it('says where', () => {
    expect(wordsFor('{\n"a": }')[0]).toMatch(/^line 2, column \d+\|/);
    const [finding] = wordsFor(serialisePlan(DEMO_PLAN).replace('"count": 2', '"count": 200'));
    expect(finding).toMatch(/^scenarios\.0\.chambers\.0\.count \(200\)\|/);
  });
});
