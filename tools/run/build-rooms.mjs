import { existsSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { root } from './root.mjs';
import { runTool } from './run-command.mjs';
import { readStamp, sourceStamp, writeStamp } from './source-stamp.mjs';

const common = ['tsconfig.base.json', 'package-lock.json'];

/** Everything that can be built: name, what it is made from, what it leaves behind, how. */
const parts = [
  {
    name: 'rooms',
    title: 'packages, server and command line',
    from: [...common, 'packages', 'apps/server', 'apps/cli'],
    leaves: compiledRooms().map((room) => `${room}/dist`),
    build: buildCompiled,
  },
  {
    name: 'web',
    title: 'app',
    from: [...common, 'packages', 'apps/web'],
    leaves: ['apps/web/dist/index.html'],
    build: () =>
      runTool('vite/bin/vite.js', ['build', '--logLevel', 'error'], { cwd: join(root, 'apps/web') }),
  },
];

/**
 * Builds what isn't built yet or was built from other sources. Gives the names of the parts that failed.
 * With `names`, only those parts.
 */
export async function buildRooms({ names = parts.map((part) => part.name), quiet = false } = {}) {
  const failed = [];
  for (const part of parts.filter(({ name }) => names.includes(name))) {
    const stamp = sourceStamp(part.from);
    if (readStamp(part.name) === stamp && part.leaves.every((path) => existsSync(join(root, path)))) continue;
    if (!quiet) console.log(`Building the ${part.title} ...`);
    if ((await part.build()) === 0) writeStamp(part.name, stamp);
    else failed.push(part.title);
  }
  return failed;
}

function compiledRooms() {
  const packages = readdirSync(join(root, 'packages')).map((name) => `packages/${name}`);
  return [...packages, 'apps/server', 'apps/cli'].filter((room) =>
    existsSync(join(root, room, 'tsconfig.json')),
  );
}

/** The compiler trusts its build record even where the output was removed: then the record goes too. */
function buildCompiled() {
  for (const room of compiledRooms())
    if (!existsSync(join(root, room, 'dist')))
      rmSync(join(root, room, 'tsconfig.tsbuildinfo'), { force: true });
  return runTool('typescript/bin/tsc', ['-b', ...compiledRooms()]);
}
