import { readFileSync } from 'node:fs';

/** Passed and failed tests in a report of the unit tests; nothing when the report is absent or not whole. */
export function unitCounts(file) {
  const report = read(file);
  if (!Number.isInteger(report?.numPassedTests)) return undefined;
  // A file that breaks before its first test counts no test, yet it failed.
  const broken = report.testResults.filter((suite) => suite.status === 'failed' && suite.assertionResults.length === 0);
  return {
    passed: report.numPassedTests,
    failed: report.numFailedTests + broken.length,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}

/** The same for a report of the browser tests. A test that passed only when repeated counts as failed. */
export function browserCounts(file) {
  const stats = read(file)?.stats;
  if (!stats) return undefined;
  return { passed: stats.expected, failed: stats.unexpected + stats.flaky, skipped: stats.skipped };
}

/** What a step adds to the closing line. A step that failed without a failed test of its own counts as one. */
export function stepCounts({ code, counts = { passed: 0, failed: 0, skipped: 0 } }) {
  return code !== 0 && counts.failed === 0 ? { ...counts, failed: 1 } : counts;
}

function read(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}
