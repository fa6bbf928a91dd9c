// Starts the app with the demo job: installs and builds what is missing, serves, prints the address and opens it where
// there is a desktop. Options go through: --port 4800, --data folder, --no-open.
import { requireNode } from './run/require-node.mjs';

requireNode();
const { ensureInstalled } = await import('./run/ensure-installed.mjs');
const { buildRooms } = await import('./run/build-rooms.mjs');
const { root } = await import('./run/root.mjs');
const failed = (await ensureInstalled()) ? await buildRooms() : ['installation'];
if (failed.length > 0) {
  console.error(`The ${failed.join(' and the ')} failed; the lines above say why.`);
  process.exit(1);
}
const demo = `${root}/examples/hill-climb-coupe/job.yaml`;
process.argv.splice(2, Infinity, 'serve', '--demo', demo, ...process.argv.slice(2));
await import('../apps/cli/bin/standstill.mjs');
