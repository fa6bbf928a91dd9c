import type { RunSet } from '../sets/run-set.ts';
import { runsOf } from '../sets/run-set.ts';
import type { DifferenceKey } from './difference.ts';
import { conditionOf, measuredConditions } from './measured-condition.ts';
import { saidOf, wordedKeys } from './worded-differences.ts';

/**
 * Whether the runs or the logs of a set tell of a condition, so that it can be held against another set's.
 *
 * @param set - reports with their runs
 * @param key - the condition
 * @returns false too for what only a person's text tells
 */
export function isKnown(set: RunSet, key: DifferenceKey): boolean {
  const worded = wordedKeys.find((one) => one === key);
  if (worded !== undefined && saidOf(runsOf(set), worded) !== '') return true;
  if (key === 'date') return set.reports.length > 0 && set.reports.every(({ epoch }) => epoch !== null);
  const measured = measuredConditions.find((one) => one.key === key);
  return measured !== undefined && conditionOf(set, measured.key) !== null;
}
