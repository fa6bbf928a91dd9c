import { spawn, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll } from 'vitest';

export const repository = fileURLToPath(new URL('../../..', import.meta.url));
const program = join(repository, 'apps/cli/bin/standstill.mjs');

/** What a run of the command left behind. */
export interface Ended {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** A text as it was before it was broken into lines. */
export function unbroken(text: string): string {
  return text.replace(/\s+/gu, ' ').trim();
}

/** Lines that are wider than what is promised where no terminal says how wide it is. */
export function tooWide(text: string): readonly string[] {
  return text.split('\n').filter((line) => line.length > 100);
}

/** The real command, built from the present sources, and the folder that it runs in: an empty one unless named. */
export function realCommand(home?: string): {
  readonly folder: () => string;
  readonly run: (...words: string[]) => Ended;
} {
  let folder = '';
  beforeAll(() => {
    spawnSync(process.execPath, [join(repository, 'tools/build.mjs'), '--only', 'rooms', '--quiet'], {
      stdio: 'ignore',
    });
    folder = mkdtempSync(join(tmpdir(), 'standstill-cli-'));
  }, 300_000);
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  return {
    folder: () => folder,
    run: (...words) => {
      const { status, stdout, stderr } = spawnSync(process.execPath, [program, ...words], {
        cwd: home ?? folder,
        encoding: 'utf8',
        env: plainEnvironment(),
        maxBuffer: 1e8,
      });
      return { code: status, out: stdout, err: stderr };
    },
  };
}

/** Starts the command without waiting for its end. */
export function startCommand(folder: string, words: readonly string[]): ReturnType<typeof spawn> {
  return spawn(process.execPath, [program, ...words], { cwd: folder, env: plainEnvironment() });
}

/** Without what would color or redirect the output. */
function plainEnvironment(): NodeJS.ProcessEnv {
  const { FORCE_COLOR: _color, NO_COLOR: _none, STANDSTILL_DATABASE: _database, ...rest } = process.env;
  return { ...rest, CI: '1' };
}
