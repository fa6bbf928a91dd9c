// Puts the real first line of each command into the README: every `$ npx standstill …` line and the line below it.
// A test of the command line holds the two together. Needs the build.
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './run/root.mjs';

const file = join(root, 'README.md');
const page = readFileSync(file, 'utf8');
writeFileSync(
  file,
  page.replace(
    /^\$ npx standstill (.+)\n.+$/gm,
    (_, words) => `$ npx standstill ${words}\n${firstLineOf(words)}`,
  ),
);

function firstLineOf(words) {
  const list = [...words.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain);
  const program = join(root, 'apps/cli/bin/standstill.mjs');
  const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...list], {
    cwd: root,
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`standstill ${words} ended with ${status}: ${stderr}`);
  return stdout.split('\n')[0];
}
