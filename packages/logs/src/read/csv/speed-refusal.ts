import { quotedList, refuseLog, type LogRefusal } from '../log-refusal.ts';
import type { ColumnPlan } from './column-plan.ts';

/**
 * Why a table can't be used for want of a speed, or of its unit: no unit is guessed for a speed.
 *
 * @param name - of the file
 * @param columns - plans of all columns but the time
 * @param labels - all headings, for the sentence
 * @returns the refusal; null where a speed with a unit is there
 */
export function speedRefusal(
  name: string,
  columns: readonly ColumnPlan[],
  labels: readonly string[],
): LogRefusal | null {
  const speeds = columns.filter(({ role }) => role === 'speed' || role === 'wheel-speed');
  if (speeds.length === 0)
    return refuseLog(
      'log-no-speed',
      name,
      `has no column that tells the speed; its columns are ${quotedList(labels)}. Say which one is the speed and in which unit.`,
    );
  if (speeds.some(({ factor }) => Number.isFinite(factor))) return null;
  const { label, unitAsRead } = speeds[0]!;
  if (unitAsRead !== '')
    return refuseLog(
      'log-unknown-unit',
      name,
      `has its speed '${label}' in the unknown unit '${unitAsRead}'; say which unit it is: km/h, mph, m/s, kn or ft/s.`,
    );
  return refuseLog(
    'log-speed-without-unit',
    name,
    `does not say in which unit its speed '${label}' is; say it: km/h, mph, m/s, kn or ft/s, with a full scale if the numbers run from 0 to 1.`,
  );
}
