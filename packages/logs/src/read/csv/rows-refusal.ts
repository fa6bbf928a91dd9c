import { refuseLog, type LogRefusal } from '../log-refusal.ts';

/**
 * Why a table can't be used for its rows: too few, or in no order.
 *
 * @param name - of the file
 * @param rows - how many could be used
 * @param jumpsBack - in how many of them the time is before that of the row above
 * @returns the refusal; null where they can be used
 */
export function rowsRefusal(name: string, rows: number, jumpsBack: number): LogRefusal | null {
  if (rows === 0)
    return refuseLog(
      'log-no-rows',
      name,
      'has no row with a time that can be read; say which column is the time, or export it as seconds or as a clock like 14:05:30.25.',
    );
  if (rows === 1)
    return refuseLog(
      'log-one-sample',
      name,
      'holds only one sample; a stop needs many, at ten a second or more, so log the whole drive and export it again.',
    );
  if (jumpsBack * 2 > rows)
    return refuseLog(
      'log-time-backwards',
      name,
      `has a time that runs backwards in ${jumpsBack} of ${rows} rows; sort the rows by time, or say which other column is the time.`,
    );
  return null;
}
