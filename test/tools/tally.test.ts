import { describe, expect, it } from 'vitest';
import { add, tallyCode, tallyPlaywright, tallyVitest } from '../../.tools/tally.mjs';

const unitReport = (passed: number, failed: number, brokenFiles = 0) => ({
  numPassedTests: passed,
  numFailedTests: failed,
  testResults: Array.from({ length: brokenFiles }, () => ({ status: 'failed', assertionResults: [] })),
});

const browserReport = (expected: number, unexpected: number, flaky = 0) => ({
  stats: { expected, unexpected, flaky, skipped: 0 },
});

it('adds', () => {
  expect(add({ passed: 1, failed: 2 }, { passed: 10, failed: 20 })).toEqual({ passed: 11, failed: 22 });
});

it('counts a stage by its exit code', () => {
  expect(tallyCode(0)).toEqual({ passed: 1, failed: 0 });
  expect(tallyCode(127)).toEqual({ passed: 0, failed: 1 });
});

describe('a vitest run', () => {
  it.each([
    ['that passed', unitReport(5, 0), 0, { passed: 5, failed: 0 }],
    ['with failures', unitReport(5, 2), 1, { passed: 5, failed: 2 }],
    ['with a file that could not be loaded', unitReport(5, 0, 1), 1, { passed: 5, failed: 1 }],
    ['that ended badly though its tests passed', unitReport(5, 0), 1, { passed: 5, failed: 1 }],
    ['that ran no test', unitReport(0, 0), 0, { passed: 0, failed: 1 }],
    ['that left no report', undefined, 1, { passed: 0, failed: 1 }],
  ])('%s', (_what, report, code, tally) => {
    expect(tallyVitest(report, code)).toEqual(tally);
  });
});

describe('a browser run', () => {
  it.each([
    ['that passed', browserReport(5, 0), 0, { passed: 5, failed: 0 }],
    ['with failures', browserReport(5, 2), 1, { passed: 5, failed: 2 }],
    ['with a test that passed on its second try', browserReport(5, 0, 1), 0, { passed: 5, failed: 1 }],
    ['whose server never came up', browserReport(0, 0), 1, { passed: 0, failed: 1 }],
    ['that left no report', undefined, 0, { passed: 0, failed: 1 }],
  ])('%s', (_what, report, code, tally) => {
    expect(tallyPlaywright(report, code)).toEqual(tally);
  });
});
