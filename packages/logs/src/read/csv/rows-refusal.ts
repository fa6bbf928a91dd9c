import { refuseLog, type LogRefusal } from '../log-refusal.ts';

/**
 * Why a table can't be used for want of rows.
 *
 * @param name - of the file
 * @param rows - how many could be used
 * @returns the refusal; null where there are enough
 */
export function rowsRefusal(name: string, rows: number): LogRefusal | null {
  if (rows === 0) return refuseLog('log-no-rows', name, 'has no row with a time that can be read.');
  if (rows === 1)
    return refuseLog(
      'log-one-sample',
      name,
      'holds only one sample; a stop needs many, at ten a second or more.',
    );
  return null;
}
