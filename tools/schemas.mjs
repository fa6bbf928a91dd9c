// Writes schemas/*.schema.json, the published shapes of the job document and of every result, from the workshop's own
// schemas. `--check` writes nothing and fails when a committed file is not what the code says. Needs the build.
import { existsSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './run/root.mjs';

const { schemas } = await import('../apps/cli/dist/schema/schemas.js');
const folder = join(root, 'schemas');
const wanted = new Map(
  Object.entries(schemas()).map(([name, schema]) => [`${name}.schema.json`, text(schema())]),
);

const problems = process.argv.includes('--check') ? findProblems() : write();
for (const line of problems) console.error(line);
process.exitCode = problems.length > 0 ? 1 : 0;

function text(schema) {
  return `${JSON.stringify(schema, null, 2)}\n`;
}

function write() {
  mkdirSync(folder, { recursive: true });
  for (const [name, content] of wanted) writeFileSync(join(folder, name), content);
  return [];
}

function findProblems() {
  const there = existsSync(folder) ? readdirSync(folder) : [];
  const stale = [...wanted].filter(
    ([name, content]) => !there.includes(name) || readFileSync(join(folder, name), 'utf8') !== content,
  );
  return [
    ...stale.map(([name]) => `schemas/${name}: not what the code says; run node tools/schemas.mjs`),
    ...there.filter((name) => !wanted.has(name)).map((name) => `schemas/${name}: no such document or result`),
  ];
}
