import { existsSync, readFileSync } from 'node:fs';

/**
 * Sums up a report of the test runner. A file that could not even be loaded and an error outside every test count as
 * failures too: they hide tests.
 */
export function readTestReport(file) {
  if (!existsSync(file)) return { passed: 0, failed: 1, skipped: 0 };
  const report = JSON.parse(readFileSync(file, 'utf8'));
  const broken = report.testResults.filter(
    ({ status, assertionResults }) =>
      status === 'failed' && !assertionResults.some((result) => result.status === 'failed'),
  ).length;
  const failed = report.numFailedTests + broken;
  return {
    passed: report.numPassedTests,
    failed: failed === 0 && !report.success ? 1 : failed,
    skipped: report.numPendingTests + report.numTodoTests,
  };
}
