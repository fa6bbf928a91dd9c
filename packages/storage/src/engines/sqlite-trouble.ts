import { StoreError } from '../errors/store-error.ts';

/**
 * Says in our words what SQLite reported; anything unknown is passed on as it is.
 *
 * @param error - what was thrown
 * @param file - path of the database file, for the sentence
 * @returns the error to throw
 */
export function sqliteTrouble(error: unknown, file: string): unknown {
  const code = sqliteCode(error);
  if (code.startsWith('SQLITE_BUSY') || code.startsWith('SQLITE_LOCKED'))
    return new StoreError('store-busy', `Another program holds ${file}. Try again in a moment.`, error);
  if (code.startsWith('SQLITE_FULL'))
    return new StoreError('store-full', `The disk that holds ${file} is full. Nothing was changed.`, error);
  if (code.startsWith('SQLITE_READONLY'))
    return new StoreError('store-read-only', `${file} can't be written: it is read-only.`, error);
  if (code === 'SQLITE_NOTADB')
    return new StoreError('store-not-a-database', `${file} is not a Standstill database.`, error);
  if (code.startsWith('SQLITE_CORRUPT'))
    return new StoreError('store-not-a-database', `${file} is damaged: put a backup in its place.`, error);
  if (code.startsWith('SQLITE_CANTOPEN') || code.startsWith('SQLITE_IOERR'))
    return new StoreError('store-unreachable', `${file} can't be opened, read or written.`, error);
  return error;
}

function sqliteCode(error: unknown): string {
  if (!(error instanceof Error) || !('code' in error) || typeof error.code !== 'string') return '';
  return error.code;
}
