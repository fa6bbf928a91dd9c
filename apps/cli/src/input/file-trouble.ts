import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'reading it is not allowed',
  EPERM: 'reading it is not allowed',
  EISDIR: 'it is a folder',
};

/** One line that names a file and why it can't be read. */
export function fileTrouble(file: string, error: unknown): CommandError {
  if (error instanceof CommandError) return error;
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  return new CommandError(`${file}: ${reasons[code] ?? 'it could not be read'}.`, exitCode.unreadable);
}
