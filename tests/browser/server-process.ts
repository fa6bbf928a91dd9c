import { spawn, type ChildProcess } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const program = join(root, 'apps/server/dist/main.js');
const demo = join(root, 'examples/hill-climb-coupe/job.yaml');
const patience = 30_000;

/** The real server as a program of its own, with a data folder that is thrown away. */
export interface ServerProcess {
  /** Without a slash at the end. */
  readonly address: string;
  /** Ends the program and keeps its data. */
  readonly stop: () => Promise<void>;
  /** Starts it again on the same port and the same data. */
  readonly start: () => Promise<void>;
  /** Ends it and throws the data away. */
  readonly remove: () => Promise<void>;
}

/**
 * Starts the built server on a free port with the demo job in it.
 *
 * @returns the running server
 * @throws Error where it or the app is not built
 */
export async function startServerProcess(): Promise<ServerProcess> {
  for (const built of [program, join(root, 'apps/web/dist/index.html')]) {
    if (!existsSync(built)) throw new Error(`${built} is missing: run npm run build first.`);
  }
  const folder = mkdtempSync(join(tmpdir(), 'standstill-browser-'));
  let child: ChildProcess;
  let address: string;
  ({ child, address } = await run(folder, '0'));
  const stop = () => end(child);
  return {
    address,
    stop,
    start: async () => {
      ({ child } = await run(folder, new URL(address).port));
    },
    remove: async () => {
      await stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function run(folder: string, port: string): Promise<{ child: ChildProcess; address: string }> {
  const child = spawn(process.execPath, [program, '--port', port, '--database', folder, '--demo', demo]);
  return new Promise((resolve, reject) => {
    let said = '';
    const late = setTimeout(() => reject(new Error(`The server did not start: ${said}`)), patience);
    const listen = (piece: Buffer) => {
      said += piece.toString();
      const address = /http:\/\/[^\s/]+/.exec(said)?.[0];
      if (address === undefined) return;
      clearTimeout(late);
      resolve({ child, address });
    };
    child.stdout.on('data', listen);
    child.stderr.on('data', (piece: Buffer) => (said += piece.toString()));
    child.once('exit', (code) => reject(new Error(`The server ended with ${code}: ${said}`)));
  });
}

function end(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.once('exit', () => resolve());
    child.kill('SIGTERM');
  });
}
