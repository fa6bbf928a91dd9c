import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

const page = 'docs/truths.md';
const leastCases = 500;

/** Rows of docs/truths.md whose test is not there, draws fewer cases than the row says, or says too few. */
export function truthProblems(root) {
  const rows = truthRows(readFileSync(join(root, page), 'utf8'));
  if (rows.length === 0) return [`${page}: no table of truths`];
  return rows.flatMap((row) => problemsOf(root, row).map((problem) => `${page}: '${row.truth}': ${problem}`));
}

/** The table's rows: the truth, the test files and the number of cases; null where the row says `none: why`. */
export function truthRows(text) {
  return text
    .split('\n')
    .filter((line) => line.startsWith('| ') && !/^\| (?:truth|-)/.test(line))
    .map((line) => line.split('|').map((cell) => cell.trim()))
    .map(([, truth, heldBy, cases]) => ({
      truth,
      files: [...heldBy.matchAll(/`([^`]+)`/g)].map(([, file]) => file),
      cases: /^none: \S/.test(cases) ? null : Number(cases.replaceAll(',', '')),
    }));
}

function problemsOf(root, { files, cases }) {
  if (files.length === 0) return ['names no test'];
  const gone = files.filter((file) => !existsSync(join(root, file)));
  if (gone.length > 0) return gone.map((file) => `${file} is not there`);
  if (cases === null) return [];
  if (!(cases >= leastCases)) return [`has ${cases} cases; at least ${leastCases} are wanted`];
  return files.flatMap((file) => {
    const drawn = casesDrawn(readFileSync(join(root, file), 'utf8'));
    return drawn.includes(cases) ? [] : [`${file} draws ${drawn.join(', ') || 'nothing'}, not ${cases}`];
  });
}

/** Every number of cases that a test asks for. */
function casesDrawn(text) {
  const numbers = [...text.matchAll(/\b(?:numRuns|draws): ([\d_]+)/g)];
  return [...new Set(numbers.map(([, number]) => Number(number.replaceAll('_', ''))))];
}
