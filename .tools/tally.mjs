/** A count of checks that passed and failed. */
export const NOTHING = { passed: 0, failed: 0 };

export function add(a, b) {
  return { passed: a.passed + b.passed, failed: a.failed + b.failed };
}

/** The tally of a stage that is one check: its exit code says how it went. */
export function tallyCode(code) {
  return code === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

/** A run that ended badly though no test failed, or that ran no test at all, counts as one failure. */
function withRunFailure(tally, code) {
  const hidden = tally.failed === 0 && (code !== 0 || tally.passed === 0);
  return hidden ? add(tally, { passed: 0, failed: 1 }) : tally;
}

/**
 * The tally of a vitest run from its JSON report; a file that could not be loaded counts as one failure.
 * Without a report the run never got that far: one failure.
 */
export function tallyVitest(report, code) {
  if (!report) return { passed: 0, failed: 1 };
  const broken = report.testResults.filter((file) => file.status === 'failed' && file.assertionResults.length === 0);
  const tally = { passed: report.numPassedTests, failed: report.numFailedTests + broken.length };
  return withRunFailure(tally, code);
}

/** The tally of a Playwright run from its JSON report. A test that passed only on a second try counts as failed. */
export function tallyPlaywright(report, code) {
  if (!report) return { passed: 0, failed: 1 };
  const { expected, unexpected, flaky } = report.stats;
  return withRunFailure({ passed: expected, failed: unexpected + flaky }, code);
}
