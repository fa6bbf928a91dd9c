import { readDemo, startServer, type Demo, type RunningServer } from '@standstill/server';
import { knownOptions } from '../input/known-options.ts';
import { readCountOption } from '../input/read-count-option.ts';
import { requireJob } from '../input/require-job.ts';
import { jsonText } from '../print/json-text.ts';
import { openAddress } from '../serve/open-address.ts';
import { CommandError } from '../surface/command-error.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';

export interface ServeJobsOptions {
  readonly port?: string;
  readonly data?: string;
  readonly demo?: string;
  readonly open: boolean;
  readonly json?: boolean;
}

/** Starts the server and says where it is; it runs until it is stopped. */
export async function serveJobs(options: ServeJobsOptions, terminal: Terminal): Promise<ExitCode> {
  const server = await start(options);
  if (options.json === true) terminal.out(jsonText({ kind: 'serving', version: 1, address: server.address }));
  else terminal.out(`Standstill is at ${server.address}\nStop it with Ctrl+C.`);
  if (options.open) openAddress(server.address);
  return exitCode.ok;
}

async function start({ port, data, demo }: ServeJobsOptions): Promise<RunningServer> {
  const known = knownOptions({
    port: readCountOption('--port', port, { low: 0, high: 65_535 }),
    dataFolder: data,
    demo: demo === undefined ? undefined : () => soundDemo(demo),
  });
  try {
    return await startServer({ ...known, print: () => {} });
  } catch (error) {
    throw error instanceof CommandError ? error : (expected(error) ?? error);
  }
}

/** Mistakes in the demo are told with their place, as `check` tells them. */
async function soundDemo(path: string): Promise<Demo> {
  const { file } = await requireJob(path);
  return readDemo(file);
}

/** Errors that the server means for a person; anything else is a fault of ours. */
function expected(error: unknown): CommandError | null {
  if (!(error instanceof Error)) return null;
  if ('code' in error && error.code === 'ENOENT')
    return new CommandError(`${error.message}.`, exitCode.unreadable);
  if (error.name === 'StartError' || error.name === 'StoreError')
    return new CommandError(error.message, exitCode.refused);
  return error.name === 'RequestRefusal' ? new CommandError(error.message, exitCode.unreadable) : null;
}
