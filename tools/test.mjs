// Holds everything: format, lint, types, architecture, docs, schemas, tests, published numbers, browser. `--long` runs
// the long tests too. The last line sums up; the exit code is 1 where anything failed.
import { requireNode } from './run/require-node.mjs';

requireNode();
const { ensureInstalled } = await import('./run/ensure-installed.mjs');
if (!(await ensureInstalled())) {
  console.error('The packages could not be installed; the lines above say why.');
  console.log('0 passed, 1 failed');
  process.exit(1);
}
const { longSteps, steps } = await import('./run/steps.mjs');
const sum = { passed: 0, failed: 0, skipped: 0 };
const failures = [];
for (const step of process.argv.includes('--long') ? [...steps, ...longSteps] : steps) {
  console.log(`\n--- ${step.title}`);
  const from = performance.now();
  const counts = await step.run();
  for (const key of Object.keys(sum)) sum[key] += counts[key];
  if (counts.failed > 0) failures.push(step.title);
  console.log(
    `--- ${step.title}: ${counts.failed > 0 ? 'FAILED' : 'passed'}, ${((performance.now() - from) / 1000).toFixed(1)} s`,
  );
}
if (failures.length > 0) console.log(`\nFailed: ${failures.join(', ')}`);
console.log(
  `\n${sum.passed} passed, ${sum.failed} failed${sum.skipped > 0 ? `, ${sum.skipped} skipped` : ''}`,
);
process.exitCode = sum.failed > 0 ? 1 : 0;
