import { existsSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { CommandError } from './command-error.ts';
import { exitCode } from './exit-code.ts';

/** Ends a command before its work where the file that it is to write is already there and may not be replaced. */
export function requireFree(file: string | undefined, force: boolean | undefined): void {
  if (file !== undefined && force !== true && existsSync(file))
    throw alreadyThere(file, '; --force writes over it');
}

/** Writes a file that is not there yet; over one that is there only where that was said. */
export async function writeNewFile(
  file: string,
  text: string,
  { force = false, hint = '' }: { readonly force?: boolean | undefined; readonly hint?: string } = {},
): Promise<void> {
  try {
    await writeFile(file, text, { flag: force ? 'w' : 'wx' });
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? error.code : '';
    if (code === 'EEXIST') throw alreadyThere(file, hint);
    const why = code === 'ENOENT' ? 'the folder is not there' : 'it could not be written';
    throw new CommandError(`${file}: ${why}.`, exitCode.refused);
  }
}

function alreadyThere(file: string, hint: string): CommandError {
  return new CommandError(
    `${file}: there is already such a file, and it stays as it is${hint}.`,
    exitCode.refused,
  );
}
