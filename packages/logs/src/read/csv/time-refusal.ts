import { quotedList, refuseLog, type LogRefusal } from '../log-refusal.ts';
import type { ColumnPlan } from './column-plan.ts';
import { sampleOf } from './column-sample.ts';
import type { CsvDialect } from './csv-dialect.ts';
import { runsBackwards } from './plan-time.ts';

/**
 * Why a table can't be used for want of a time.
 *
 * @param name - of the file
 * @param dialect - the file's dialect with its first rows
 * @param columns - all columns' plans
 * @param labels - all headings, for the sentence
 * @returns the refusal
 */
export function timeRefusal(
  name: string,
  dialect: CsvDialect,
  columns: readonly ColumnPlan[],
  labels: readonly string[],
): LogRefusal {
  const backwards = columns.find(
    ({ role, index }) => role === 'time' && runsBackwards(sampleOf(dialect, index).numbers),
  );
  if (backwards !== undefined)
    return refuseLog(
      'log-time-backwards',
      name,
      `has its time '${backwards.label}' running backwards; sort the rows by time, or say which other column is the time.`,
    );
  return refuseLog(
    'log-no-time',
    name,
    `has no column that tells the time; its columns are ${quotedList(labels)}. Say which one is the time.`,
  );
}
