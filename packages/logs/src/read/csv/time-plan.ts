import { quantile } from '@standstill/numerics';
import type { IssueList } from '../../channels/issue-list.ts';
import { clockShape, type ClockShape } from '../time/clock-shape.ts';
import type { ColumnPlan } from './column-plan.ts';
import { sampleOf } from './column-sample.ts';
import type { CsvDialect } from './csv-dialect.ts';
import { headingWords } from './heading-words.ts';
import { unitScale } from './unit-scale.ts';

/** How the time column is read. */
export type TimePlan =
  | { readonly kind: 'clock'; readonly index: number; readonly shape: ClockShape }
  | {
      readonly kind: 'number';
      readonly index: number;
      /** s for 1 in the column. */
      readonly factor: number;
      /** Whether the numbers count from 1970-01-01. */
      readonly sinceEpoch: boolean;
    };

/** From 2001 to 2100, s since 1970-01-01: numbers of this size count from there. */
const epochRange = { low: 1e9, high: 4.2e9 };

/**
 * Chooses the time column among those that may be one: the first whose values are clock readings or mostly ascending
 * numbers.
 *
 * @param dialect - the file's dialect with its first rows
 * @param columns - all columns' plans
 * @param issues - where an assumed unit is reported
 * @returns how to read it; null where no column tells the time
 */
export function timePlan(
  dialect: CsvDialect,
  columns: readonly ColumnPlan[],
  issues: IssueList,
): TimePlan | null {
  for (const column of columns.filter(({ role }) => role === 'time')) {
    const { fields, numbers } = sampleOf(dialect, column.index);
    const shape = clockShape(fields[0] ?? '');
    if (shape !== null) return { kind: 'clock', index: column.index, shape };
    if (numbers.length * 2 < fields.length || numbers.length === 0 || !mostlyAscending(numbers)) continue;
    return { kind: 'number', index: column.index, ...numberPlan(column, numbers, issues) };
  }
  return null;
}

function mostlyAscending(numbers: readonly number[]): boolean {
  let up = 0;
  for (let i = 1; i < numbers.length; i += 1) if (numbers[i]! >= numbers[i - 1]!) up += 1;
  return up * 2 >= numbers.length - 1;
}

function numberPlan(
  column: ColumnPlan,
  numbers: readonly number[],
  issues: IssueList,
): { factor: number; sinceEpoch: boolean } {
  const typical = quantile(numbers, 0.5);
  const factor = unitScale(column.unitAsRead, 'time')?.factor ?? factorByName(column.label) ?? null;
  if (factor !== null) return { factor, sinceEpoch: isEpoch(typical * factor) };
  const epoch = [1, 1e-3, 1e-6, 1e-9].find((size) => isEpoch(typical * size));
  if (epoch !== undefined) return { factor: epoch, sinceEpoch: true };
  const assumed = countsMilliseconds(numbers) ? 1e-3 : 1;
  const unit = assumed === 1 ? 'seconds' : 'milliseconds';
  issues.add('time-unit-assumed', null, () => `Column '${column.label}' has no unit; ${unit} are assumed.`);
  return { factor: assumed, sinceEpoch: false };
}

function isEpoch(seconds: number): boolean {
  return seconds >= epochRange.low && seconds <= epochRange.high;
}

function factorByName(label: string): number | null {
  const words = headingWords(label);
  if (words.some((word) => ['ms', 'msec', 'millis', 'milliseconds'].includes(word))) return 1e-3;
  if (words.some((word) => ['us', 'usec', 'micros', 'microseconds'].includes(word))) return 1e-6;
  return words.some((word) => ['s', 'sec', 'secs', 'seconds'].includes(word)) ? 1 : null;
}

/** Whole numbers that usually step by 4 to 2000 are milliseconds: as seconds they'd be no log of a stop. */
function countsMilliseconds(numbers: readonly number[]): boolean {
  const steps = numbers.slice(1).map((value, index) => value - numbers[index]!);
  const usual = steps.length === 0 ? 0 : quantile(steps, 0.5);
  return numbers.every(Number.isInteger) && usual >= 4 && usual <= 2000;
}
