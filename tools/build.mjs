// Builds the packages, the server, the command line and the app; only what changed. `--only rooms` or `--only web`.
import { requireNode } from './run/require-node.mjs';

requireNode();
const { ensureInstalled } = await import('./run/ensure-installed.mjs');
const { buildRooms } = await import('./run/build-rooms.mjs');
const only = process.argv.indexOf('--only');
const quiet = process.argv.includes('--quiet');
const names = only < 0 ? undefined : [process.argv[only + 1]];
const failed = (await ensureInstalled())
  ? await buildRooms({ ...(names === undefined ? {} : { names }), quiet })
  : ['installation'];
for (const name of failed) console.error(`The ${name} could not be built; the lines above say why.`);
process.exitCode = failed.length > 0 ? 1 : 0;
