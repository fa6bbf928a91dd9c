import { existsSync } from 'node:fs';

/** Files of one side: each argument is a file, or several with commas between. */
export function logFiles(arguments_: readonly (string | undefined)[]): readonly string[] {
  return arguments_
    .filter((text) => text !== undefined)
    .flatMap((text) => (existsSync(text) ? [text] : text.split(',').filter((file) => file !== '')));
}
