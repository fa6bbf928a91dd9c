import { spawn, spawnSync } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const repository = fileURLToPath(new URL('../../../../', import.meta.url));
const program = `${repository}apps/server/dist/main.js`;

/** The compiled server as a process of its own. */
export interface RunningProgram {
  /** What it printed as its address, without the last slash. */
  readonly address: string;
  readonly process: ChildProcess;
  /** Everything that it has printed so far. */
  output(): string;
  /** Sends a signal and waits for the end. */
  end(signal: NodeJS.Signals): Promise<number | null>;
}

/** Brings the compiled program up to date with its sources. */
export function compileProgram(): void {
  const compiler = `${repository}node_modules/typescript/bin/tsc`;
  const ended = spawnSync(process.execPath, [compiler, '-b', 'apps/server'], {
    cwd: repository,
    encoding: 'utf8',
  });
  if (!existsSync(program)) throw new Error(`the server did not compile: ${ended.stdout}`);
}

/**
 * @param words - its command line
 * @returns the program, listening
 */
export async function startProgram(words: readonly string[]): Promise<RunningProgram> {
  const child = spawn(process.execPath, [program, ...words], { stdio: ['ignore', 'pipe', 'pipe'] });
  let output = '';
  let trouble = '';
  const ended = new Promise<number | null>((resolve) => child.once('exit', (code) => resolve(code)));
  const address = await new Promise<string>((resolve, reject) => {
    child.stderr.setEncoding('utf8').on('data', (piece: string) => (trouble += piece));
    child.stdout.setEncoding('utf8').on('data', (piece: string) => {
      output += piece;
      const found = /(http:\/\/\S+)\//.exec(output)?.[1];
      if (found !== undefined) resolve(found);
    });
    void ended.then((code) => reject(new Error(`the server ended with ${code}: ${trouble}`)));
  });
  const end = (signal: NodeJS.Signals): Promise<number | null> => {
    child.kill(signal);
    return ended;
  };
  return { address, process: child, output: () => output, end };
}

/**
 * Runs the program to its end.
 *
 * @param words - its command line
 * @returns its exit code and what it printed
 */
export function runToEnd(words: readonly string[]): {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
} {
  const ended = spawnSync(process.execPath, [program, ...words], { encoding: 'utf8', timeout: 20_000 });
  return { code: ended.status, out: ended.stdout, err: ended.stderr };
}
