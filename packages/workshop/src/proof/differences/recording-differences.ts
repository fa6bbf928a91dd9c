import type { LogReport } from '../../results/log-report.ts';
import { listOf } from '../../words/list-of.ts';

import { loggerOf } from '../same-logger.ts';
import type { Difference, DifferenceKey } from './difference.ts';
import type { RunSet } from '../sets/run-set.ts';

const startNames = {
  'brake-switch': 'brake switch',
  'brake-pressure': 'brake pressure',
  pedal: 'pedal',
  'deceleration-onset': 'onset of deceleration',
} as const;

/** What differs in how the two sets were recorded: days, where the distance starts, how often speed was sampled. */
export function recordingDifferences(before: RunSet, after: RunSet): readonly Difference[] {
  return [
    ...differing(
      'date',
      'different days',
      [days(before.reports), days(after.reports)],
      'weather, tires and surface change with them',
    ),
    ...differing(
      'start-signal',
      'the start of a stop is told by different signals',
      [starts(before.reports), starts(after.reports)],
      'that alone can move the distance by some feet, and the interval of the difference is wider for it',
    ),
    ...loggers(before.reports, after.reports),
    ...rates(before.reports, after.reports),
  ];
}

function differing(
  key: DifferenceKey,
  what: string,
  [before, after]: readonly [before: readonly string[], after: readonly string[]],
  why: string,
): readonly Difference[] {
  if (before.length === 0 || after.length === 0) return [];
  const [a, b] = [listOf(before), listOf(after)];
  return a === b ? [] : [{ key, text: `${what}: ${a} before, ${b} after; ${why}` }];
}

function days(reports: readonly LogReport[]): string[] {
  return distinct(reports.flatMap(({ epoch }) => (epoch === null ? [] : [epoch.slice(0, 10)])));
}

function starts(reports: readonly LogReport[]): string[] {
  return distinct(counted(reports).map(({ startBy }) => startNames[startBy]));
}

/** Where the start is told by the speed itself on both sides, the logger's delay plays no part. */
function loggers(before: readonly LogReport[], after: readonly LogReport[]): readonly Difference[] {
  const byBrake = counted([...before, ...after]).some(({ startBy }) => startBy !== 'deceleration-onset');
  if (!byBrake) return [];
  return differing(
    'logger',
    'the logs seem to come from different loggers',
    [distinct(before.map(loggerOf)), distinct(after.map(loggerOf))],
    'each has its own unknown delay between brake signal and speed, and the interval of the difference is wider for it',
  );
}

function rates(before: readonly LogReport[], after: readonly LogReport[]): readonly Difference[] {
  const [a, b] = [usualRate(before), usualRate(after)];
  if (a === null || b === null || Math.max(a, b) < 2 * Math.min(a, b)) return [];
  const text = `speed was sampled ${round(a)} times a second before and ${round(b)} after; the slower one knows its distances less well`;
  return [{ key: 'sample-rate', text }];
}

function usualRate(reports: readonly LogReport[]): number | null {
  const all = counted(reports).map(({ sampleRate_Hz }) => sampleRate_Hz);
  return all.length === 0 ? null : Math.min(...all);
}

function round(rate: number): string {
  return String(Number(rate.toPrecision(2)));
}

function counted(reports: readonly LogReport[]): LogReport['stops'] {
  return reports.flatMap(({ stops }) => stops.filter((stop) => stop.counted));
}

function distinct(words: readonly string[]): string[] {
  return [...new Set(words)].toSorted();
}
