import { randomUUID } from 'node:crypto';
import { fileURLToPath } from 'node:url';
import { openStore } from '@standstill/storage';
import type { Store } from '@standstill/workshop';
import type { App } from '../app.ts';
import { calculationsHere } from '../calculations/calculations-here.ts';
import type { Calculations } from '../calculations/calculations.ts';
import { calculationsInThread } from '../calculations/calculations-in-thread.ts';
import { createServer } from '../create-server.ts';
import { allowedHosts, isLoopback } from '../guard/allowed-hosts.ts';
import { databaseAddress } from './database-address.ts';
import type { DatabaseChoice } from './database-address.ts';
import type { Demo } from './demo.ts';
import { listen } from './listen.ts';
import { loadDemo } from './load-demo.ts';
import { onStopSignal } from './on-stop-signal.ts';

/** How a server starts; everything has a default that suits one machine. */
export interface StartOptions extends DatabaseChoice {
  /** Address to listen on; only this machine reaches the default. */
  readonly host?: string;
  /** 0 lets the system choose. */
  readonly port?: number;
  /** Put into a store that has no jobs. */
  readonly demo?: Demo | (() => Promise<Demo>);
  /** Folder of the built app; the repository's where absent. */
  readonly webFolder?: string;
  /** Gets the one line with the address; standard output where absent. */
  readonly print?: (line: string) => void;
}

/** A server that listens. */
export interface RunningServer {
  /** What a browser opens. */
  readonly address: string;
  readonly store: Store;
  /** Finishes what is under way and closes the database. */
  stop(): Promise<void>;
}

export const defaultPort = 4780;
const builtApp = fileURLToPath(new URL('../../../web/dist', import.meta.url));

/**
 * Opens the database, starts the server and prints one line with its address. Stops on SIGINT and SIGTERM.
 *
 * @param options - where to listen and where to keep jobs
 * @returns the running server
 * @throws StoreError where the database can't be used
 * @throws StartError where it can't listen
 */
export async function startServer(options: StartOptions = {}): Promise<RunningServer> {
  const { host = '127.0.0.1', port = defaultPort, print = (line) => console.log(line) } = options;
  const store = await openStore({ address: databaseAddress(options, process.env, process.platform) });
  const app = createApp(store, options.webFolder ?? builtApp, host);
  try {
    if (options.demo !== undefined) await loadDemo({ store, clock, ids: randomUUID }, options.demo);
    const address = await listen(app, { host, port });
    if (!isLoopback(host)) console.warn(openDoor);
    print(`Standstill is at ${address}`);
    return running(address, store, app);
  } catch (error) {
    await closeAll(app, store);
    throw error;
  }
}

const openDoor =
  'Warning: there are no accounts yet. Whoever reaches this address can read and change every job.';

const clock = (): Date => new Date();

function createApp(store: Store, webFolder: string, host: string): App {
  const logger = { level: 'error', stream: process.stderr };
  const hosts = allowedHosts(host);
  return createServer({
    store,
    clock,
    ids: randomUUID,
    webFolder,
    calculations: chooseCalculations(),
    hosts,
    logger,
  });
}

/** The thread runs compiled code; from source, as in tests, there is none. */
function chooseCalculations(): Calculations {
  if (!import.meta.url.endsWith('.js')) return calculationsHere();
  return calculationsInThread(new URL('../calculations/calculation-worker.js', import.meta.url));
}

function running(address: string, store: Store, app: App): RunningServer {
  let stopped: Promise<void> | null = null;
  const stop = (): Promise<void> => {
    forget();
    return (stopped ??= closeAll(app, store));
  };
  const forget = onStopSignal(stop);
  return { address, store, stop };
}

async function closeAll(app: App, store: Store): Promise<void> {
  await app.close();
  await store.close();
}
