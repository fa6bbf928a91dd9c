import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readTestReport } from './read-test-report.mjs';

const folder = mkdtempSync(join(tmpdir(), 'standstill-report-'));
afterAll(() => rmSync(folder, { recursive: true }));

const sound = {
  success: true,
  numPassedTests: 3,
  numFailedTests: 0,
  numPendingTests: 1,
  numTodoTests: 1,
  testResults: [{ status: 'passed', assertionResults: [{ status: 'passed' }] }],
};

function read(report: unknown): unknown {
  const file = join(folder, 'report.json');
  writeFileSync(file, JSON.stringify(report));
  return readTestReport(file);
}

describe('what a report of the test runner counts', () => {
  it('counts tests', () => {
    expect(read(sound)).toEqual({ passed: 3, failed: 0, skipped: 2 });
    const failing = { status: 'failed', assertionResults: [{ status: 'failed' }] };
    expect(read({ ...sound, success: false, numFailedTests: 1, testResults: [failing] })).toMatchObject({
      failed: 1,
    });
  });

  it('counts a file that could not be loaded as a failure', () => {
    const broken = { status: 'failed', assertionResults: [] };
    expect(read({ ...sound, success: false, testResults: [broken, broken] })).toMatchObject({ failed: 2 });
  });

  it('counts an error outside every test as a failure', () => {
    expect(read({ ...sound, success: false })).toMatchObject({ failed: 1 });
  });

  it('counts a report that is not there as a failure', () => {
    expect(readTestReport(join(folder, 'gone.json'))).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });
});
