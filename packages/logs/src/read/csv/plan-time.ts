import { quantile } from '@standstill/numerics';
import type { IssueList } from '../../channels/issue-list.ts';
import { clockShape } from '../time/clock-shape.ts';
import type { ColumnPlan } from './column-plan.ts';
import { sampleOf } from './column-sample.ts';
import type { CsvDialect } from './csv-dialect.ts';
import { headingWords } from './heading-words.ts';
import { planClock } from './plan-clock.ts';
import type { TimePlan } from './time-plan.ts';
import { unitScale } from './unit-scale.ts';

/** From 2001 to 2100, s since 1970-01-01: numbers of this size count from there. */
const epochRange = { low: 1e9, high: 4.2e9 };
/** From 2000 to 2100, days as spreadsheets count them. */
const spreadsheetDays = { low: 36_526, high: 73_050 };
const day = 86_400;

/**
 * Chooses the time column among those that may be one by their heading: the first whose values are clock readings or
 * mostly ascending numbers. Where no heading says so, a column of clock readings is the time.
 *
 * @param dialect - the file's dialect with its first rows
 * @param columns - all columns' plans
 * @param issues - where an assumed unit is reported
 * @returns how to read it; null where no column tells the time
 */
export function planTime(
  dialect: CsvDialect,
  columns: readonly ColumnPlan[],
  issues: IssueList,
): TimePlan | null {
  for (const column of columns.filter(({ role }) => role === 'time')) {
    const clock = planClock(dialect, columns, column, issues);
    if (clock !== null) return clock;
    const { fields, numbers } = sampleOf(dialect, column.index);
    if (numbers.length * 2 < fields.length || numbers.length === 0 || runsBackwards(numbers)) continue;
    return { kind: 'number', index: column.index, ...numberPlan(column, numbers, issues) };
  }
  for (const column of columns.filter(({ isText }) => isText)) {
    const { fields } = sampleOf(dialect, column.index);
    if (fields.length > 1 && fields.every((field) => clockShape(field) !== null))
      return planClock(dialect, columns, column, issues);
  }
  return null;
}

/**
 * Whether numbers fall more often than they rise or stay.
 *
 * @param numbers - values of a time column in the order of the file
 */
export function runsBackwards(numbers: readonly number[]): boolean {
  let up = 0;
  for (let i = 1; i < numbers.length; i += 1) if (numbers[i]! >= numbers[i - 1]!) up += 1;
  return up * 2 < numbers.length - 1;
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
  const [assumed, unit] = assumedUnit(numbers, typical);
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

/**
 * Whole numbers that usually step by 4 to 2000 are milliseconds, and numbers of the size of a spreadsheet's days that
 * step by less than a thousandth are days: as seconds neither would be a log of a stop.
 */
function assumedUnit(numbers: readonly number[], typical: number): readonly [number, string] {
  const steps = numbers.slice(1).map((value, index) => value - numbers[index]!);
  const usual = steps.length === 0 ? 0 : quantile(steps, 0.5);
  if (numbers.every(Number.isInteger) && usual >= 4 && usual <= 2000) return [1e-3, 'milliseconds'];
  const isDay = typical >= spreadsheetDays.low && typical <= spreadsheetDays.high;
  return isDay && usual > 0 && usual < 1e-3 ? [day, 'days'] : [1, 'seconds'];
}
