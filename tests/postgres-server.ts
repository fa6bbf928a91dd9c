import { execFileSync, spawnSync } from 'node:child_process';
import { chownSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { postgresPrograms } from './postgres-programs.ts';
import { unprivilegedUser } from './unprivileged-user.ts';

/** A throwaway PostgreSQL server on 127.0.0.1. */
export interface PostgresServer {
  /** Whether the machine's own programs run it or those of the package registry. */
  readonly origin: 'machine' | 'package';
  /** Makes an empty database and answers its address. */
  createDatabase(): Promise<string>;
  /** Stops it as a power cut would and starts it again on the same data. */
  crashAndRestart(): void;
  stop(): void;
}

const missing =
  'PostgreSQL tests skipped: no initdb here and no package with its programs for this platform (Debian: apt-get install postgresql)';

/**
 * Starts a throwaway PostgreSQL server with the flushing of a real one. Where it can't be had, prints one line; in CI
 * (environment variable `CI`) that is an error.
 *
 * @returns the server, or null where there are no programs to run it
 */
export async function startPostgresServer(): Promise<PostgresServer | null> {
  const folder = mkdtempSync(join(tmpdir(), 'standstill-postgres-'));
  const programs = postgresPrograms(folder);
  if (programs === null) {
    rmSync(folder, { recursive: true, force: true });
    if (process.env['CI']) throw new Error(missing);
    console.warn(missing);
    return null;
  }
  const run = runnerIn(folder, programs.folder);
  const port = await freePort();
  run('initdb', ['-D', 'data', '-U', 'standstill', '-A', 'trust', '-E', 'UTF8', '--locale=C', '--no-sync']);
  const server = serverIn(folder, port, run);
  server.start();
  const kill = () => server.killNow();
  process.once('exit', kill);
  let count = 0;
  return {
    origin: programs.origin,
    createDatabase: () => createDatabase(port, `test_${(count += 1)}`),
    crashAndRestart: () => {
      server.stop();
      server.start();
    },
    stop: () => {
      process.off('exit', kill);
      server.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

type Run = (program: string, parameters: readonly string[]) => void;

function serverIn(folder: string, port: number, run: Run) {
  const options = `-p ${port} -c listen_addresses=127.0.0.1 -c unix_socket_directories= -c fsync=on`;
  return {
    start: () => run('pg_ctl', ['-D', 'data', '-w', '-l', 'server.log', '-o', options, 'start']),
    stop: () => run('pg_ctl', ['-D', 'data', '-w', '-m', 'immediate', 'stop']),
    killNow: () => {
      const pid = Number(readFileSync(join(folder, 'data', 'postmaster.pid'), 'utf8').split('\n')[0]);
      process.kill(pid, 'SIGQUIT');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

function runnerIn(folder: string, programs: string): Run {
  const user = unprivilegedUser();
  if (user !== null) chownSync(folder, user.uid, user.gid);
  return (program, parameters) => {
    // The daemon keeps its outputs open: a pipe would wait for it for ever.
    const stdio: ['ignore', 'ignore', 'pipe'] | 'ignore' =
      program === 'pg_ctl' ? 'ignore' : ['ignore', 'ignore', 'pipe'];
    const ended = spawnSync(join(programs, program), parameters, {
      cwd: folder,
      encoding: 'utf8',
      stdio,
      ...user,
    });
    if (ended.status !== 0)
      throw new Error(`${program} failed: ${ended.error?.message ?? ended.stderr ?? serverLog(folder)}`);
  };
}

function serverLog(folder: string): string {
  return execFileSync('tail', ['-n', '5', join(folder, 'server.log')], { encoding: 'utf8' });
}

async function createDatabase(port: number, name: string): Promise<string> {
  const address = (database: string) => `postgres://standstill@127.0.0.1:${port}/${database}`;
  const client = new pg.Client({ connectionString: address('postgres') });
  await client.connect();
  try {
    await client.query(`create database ${name}`);
  } finally {
    await client.end();
  }
  return address(name);
}

/** The server may lose the port to someone else in between; then it says so and the test run is started again. */
function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      if (address === null || typeof address === 'string') throw new Error('no port');
      probe.close(() => resolve(address.port));
    });
  });
}
