import { readFile, stat } from 'node:fs/promises';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';
import { fileTrouble } from './file-trouble.ts';

const greatest = 100_000_000;

/** Reads a file whole: a job, a table, never a log. Throws one line that names it where that can't be. */
export async function readFileBytes(file: string): Promise<Uint8Array> {
  try {
    const { size } = await stat(file);
    if (size > greatest)
      throw new CommandError(
        `${file}: ${Math.round(size / 1e6)} MB is more than such a file has (100 MB).`,
        exitCode.unreadable,
      );
    return await readFile(file);
  } catch (error) {
    throw fileTrouble(file, error);
  }
}
