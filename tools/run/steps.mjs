import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { buildRooms } from './build-rooms.mjs';
import { readTestReport } from './read-test-report.mjs';
import { root } from './root.mjs';
import { runCommand, runTool } from './run-command.mjs';

const lintedFolders = ['packages', 'apps', 'checks', 'tests', 'tools', 'benchmarks'];

/** Everything that `npm test` and `npm run check` hold, in order: each gives how many passed, failed and were skipped. */
export const steps = [
  single('build', async () => ((await buildRooms()).length === 0 ? 0 : 1)),
  single('format', () => runTool('prettier/bin/prettier.cjs', ['--check', '--log-level', 'warn', '.'])),
  single('lint', () => runTool('oxlint/bin/oxlint', ['--type-aware', '--deny-warnings', ...lintedFolders])),
  single('types', () => runTool('typescript/bin/tsc', ['-b'])),
  single('architecture', () => runScript('tools/architecture.mjs')),
  single('unused', () =>
    runTool('knip/bin/knip.js', ['--include', 'files,exports,duplicates', '--no-config-hints']),
  ),
  single('docs', () => runScript('tools/docs.mjs')),
  single('schemas', () => runScript('tools/schemas.mjs', ['--check'])),
  single('page of the classes', () => runScript('tools/library-page.mjs', ['--check'])),
  tests('behavior, law, pin and published numbers', ['behavior', 'law', 'pin', 'checks'], forgetCheckRows),
  single('table of published numbers', () => runScript('tools/checks-table.mjs', ['--check'])),
  tests('browser', ['browser']),
];

export const longSteps = [tests('long', ['long'])];

/** A tool that is right or wrong as a whole. */
function single(title, run) {
  return {
    title,
    run: async () =>
      (await run()) === 0 ? { passed: 1, failed: 0, skipped: 0 } : { passed: 0, failed: 1, skipped: 0 },
  };
}

/** Projects of the test runner, counted test by test. */
function tests(title, projects, prepare = () => {}) {
  return {
    title,
    run: async () => {
      prepare();
      const report = join(root, 'node_modules/.cache/standstill/reports', `${projects.join('-')}.json`);
      rmSync(report, { force: true });
      const selection = projects.flatMap((project) => ['--project', project]);
      const reporters = ['--reporter=dot', '--reporter=json', `--outputFile.json=${report}`];
      const code = await runTool('vitest/vitest.mjs', [
        'run',
        '--passWithNoTests',
        ...selection,
        ...reporters,
      ]);
      const counts = readTestReport(report);
      return code !== 0 && counts.failed === 0 ? { ...counts, failed: 1 } : counts;
    },
  };
}

function runScript(script, args = []) {
  return runCommand(process.execPath, [join(root, script), ...args]);
}

/** Rows of earlier runs would hide a check that no longer runs. */
function forgetCheckRows() {
  rmSync(join(root, 'node_modules/.cache/standstill/checks'), { recursive: true, force: true });
}
