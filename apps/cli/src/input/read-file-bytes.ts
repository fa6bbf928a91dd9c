import { readFile, stat } from 'node:fs/promises';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';

const greatest = 1_000_000_000;

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'reading it is not allowed',
  EPERM: 'reading it is not allowed',
  EISDIR: 'it is a folder',
};

/** Reads a file whole. Throws one line that names it where that can't be. */
export async function readFileBytes(file: string): Promise<Uint8Array> {
  try {
    const { size } = await stat(file);
    if (size > greatest) throw tooLarge(file, size);
    return await readFile(file);
  } catch (error) {
    if (error instanceof CommandError) throw error;
    const code = error instanceof Error && 'code' in error ? String(error.code) : '';
    throw new CommandError(`${file}: ${reasons[code] ?? 'it could not be read'}.`, exitCode.unreadable);
  }
}

function tooLarge(file: string, size: number): CommandError {
  const megabytes = Math.round(size / 1e6);
  return new CommandError(
    `${file}: ${megabytes} MB is more than is read at once (1000 MB); cut it around the stops.`,
    exitCode.unreadable,
  );
}
