import { homedir } from 'node:os';
import { join } from 'node:path';

/** Where the caller wants the data; nothing is the usual place. */
export interface DatabaseChoice {
  /** A folder on this machine. */
  readonly dataFolder?: string;
  /** `postgres://…`, or a folder or file. */
  readonly databaseUrl?: string;
}

/**
 * Answers where jobs are kept. What the caller says comes first, then the environment variable `STANDSTILL_DATABASE`,
 * then the place where the system keeps a user's data: it does not depend on the folder that the program is started
 * from, and outlives a fresh clone.
 *
 * @param choice - what the caller says
 * @param environment - the process's environment variables
 * @param platform - the operating system, as Node names it
 * @returns an address for the store
 */
export function databaseAddress(
  { dataFolder, databaseUrl }: DatabaseChoice,
  environment: Readonly<Record<string, string | undefined>>,
  platform: string,
): string {
  const named = [databaseUrl, dataFolder, environment['STANDSTILL_DATABASE']].find(
    (each) => each !== undefined && each !== '',
  );
  return named ?? join(userDataFolder(environment, platform), 'standstill');
}

function userDataFolder(environment: Readonly<Record<string, string | undefined>>, platform: string): string {
  const given = environment['XDG_DATA_HOME'];
  // The standard says that a relative path is to be ignored.
  if (given !== undefined && given.startsWith('/')) return given;
  const home = environment['HOME'] ?? homedir();
  if (platform === 'win32') return environment['LOCALAPPDATA'] ?? join(home, 'AppData', 'Local');
  if (platform === 'darwin') return join(home, 'Library', 'Application Support');
  return join(home, '.local', 'share');
}
