// Runs every benchmark in this folder and prints one table. Ratios to a reference of the same run are what counts: the
// figures themselves are the machine's. A benchmark is a file with a default export that gives rows:
// { name, value, unit, reference?, ratio?, note? }. Words after the command choose files by name: npm run bench -- stop
import { readFileSync, readdirSync } from 'node:fs';
import { cpus, totalmem } from 'node:os';

const folder = new URL('.', import.meta.url);
const wanted = process.argv.slice(2);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.mjs') && name !== 'run.mjs')
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.includes(word)))
  .toSorted();

const rows = [];
const failures = [];
for (const file of files) {
  process.stderr.write(`${file} ...\n`);
  try {
    const { default: run } = await import(new URL(file, folder));
    if (typeof run !== 'function') continue;
    rows.push(...(await run()));
  } catch (error) {
    failures.push(`${file}: ${error instanceof Error ? error.message : String(error)}`);
  }
}

console.log(machine());
console.log('');
print(rows);
for (const line of failures) console.error(line);
process.exitCode = failures.length > 0 ? 1 : 0;

function machine() {
  const { version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'));
  const [first] = cpus();
  const memory = `${Math.round(totalmem() / 2 ** 30)} GB`;
  return `Standstill ${version}, Node ${process.versions.node}, ${process.platform} ${process.arch}, ${cpus().length} × ${first?.model ?? 'unknown processor'}, ${memory}`;
}

function print(all) {
  const cells = all.map(({ name, value, unit, reference, ratio, note }) => [
    name,
    number(value),
    unit,
    reference ?? '–',
    ratio === undefined ? '–' : `${number(ratio)} ×`,
    note ?? '',
  ]);
  const lines = [['what', 'value', 'unit', 'reference', 'ratio', ''], ...cells];
  const widths = lines[0].map((_, column) => Math.max(...lines.map((line) => line[column].length)));
  for (const line of lines) {
    const padded = line.map((cell, column) =>
      column === 1 || column === 4 ? cell.padStart(widths[column]) : cell.padEnd(widths[column]),
    );
    console.log(padded.join('  ').trimEnd());
  }
}

function number(value) {
  const size = Math.abs(value);
  if (size >= 1000) return Math.round(value).toLocaleString('en-US');
  return String(Number(value.toPrecision(3)));
}
