import { fileURLToPath } from 'node:url';
import { loadDemo } from '../start/load-demo.ts';
import { readDemo } from '../start/read-demo.ts';
import { serverUnderTest } from '../server.testing.ts';
import type { ServerUnderTest } from '../server.testing.ts';

const demo = fileURLToPath(new URL('../../../../examples/hill-climb-coupe/job.yaml', import.meta.url));

/** A server that holds the demo job under the id `demo`, with the ids of its logs from before and after. */
export interface DemoServer extends ServerUnderTest {
  readonly before: readonly string[];
  readonly after: readonly string[];
}

/**
 * @returns a server with the demo job and its two logs
 */
export async function demoServer(): Promise<DemoServer> {
  const server = await serverUnderTest();
  let ids = 0;
  const parts = { store: server.store, clock: () => new Date(0), ids: () => `log-${(ids += 1)}` };
  await loadDemo(parts, await readDemo(demo));
  const logs = await server.store.listLogs('demo');
  const named = (file: string): readonly string[] =>
    logs.filter(({ name }) => name === file).map(({ id }) => id);
  return { ...server, before: named('before.csv'), after: named('after.csv') };
}
