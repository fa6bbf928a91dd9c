import type { IssueList } from '../../channels/issue-list.ts';
import { clockSeconds, namesZone } from '../time/clock-seconds.ts';
import { clockShape, dateAndTime } from '../time/clock-shape.ts';
import { dateOrder, isDate } from '../time/date-day.ts';
import type { ColumnPlan } from './column-plan.ts';
import { sampleOf } from './column-sample.ts';
import type { CsvDialect } from './csv-dialect.ts';
import { headingWords } from './heading-words.ts';
import type { TimePlan } from './time-plan.ts';

type ClockPlan = Extract<TimePlan, { readonly kind: 'clock' }>;

const dateWords = new Set(['date', 'datum', 'day', 'fecha', 'data', 'tag']);

/**
 * How to read a column of clock readings: dates in their order, with a column of dates beside it where there is one.
 *
 * @param dialect - the file's dialect with its first rows
 * @param columns - all columns' plans
 * @param column - the column that may hold clock readings
 * @param issues - where a date that can't be read is reported
 * @returns the plan; null where the column holds no clock readings
 */
export function planClock(
  dialect: CsvDialect,
  columns: readonly ColumnPlan[],
  column: ColumnPlan,
  issues: IssueList,
): ClockPlan | null {
  const { fields } = sampleOf(dialect, column.index);
  const first = fields.find((field) => clockShape(field) !== null);
  if (first === undefined || fields.filter((field) => clockShape(field) !== null).length * 2 < fields.length)
    return null;
  const shape = clockShape(first)!;
  const plain = {
    kind: 'clock' as const,
    index: column.index,
    shape,
    dateIndex: -1,
    order: null,
    skipsDate: false,
    isLocal: shape !== 'minutes-seconds' && !namesZone(first),
  };
  if (shape === 'date-time') return withOrder(plain, fields, column.label, issues);
  return shape === 'time-of-day' ? withDates(plain, dialect, columns, issues) : plain;
}

function withOrder(plan: ClockPlan, fields: readonly string[], label: string, issues: IssueList): ClockPlan {
  const order = dateOrder(fields.map((field) => dateAndTime(field.trim()).date));
  if (fields.some((field) => !Number.isNaN(clockSeconds(field, 'date-time', order))))
    return { ...plan, order };
  doubt(label, fields[0]!, issues);
  return { ...plan, shape: 'time-of-day', skipsDate: true };
}

function withDates(
  plan: ClockPlan,
  dialect: CsvDialect,
  columns: readonly ColumnPlan[],
  issues: IssueList,
): ClockPlan {
  for (const { index, label } of columns) {
    if (index === plan.index || !headingWords(label).some((word) => dateWords.has(word))) continue;
    const { fields } = sampleOf(dialect, index);
    const readable = fields.filter(isDate);
    const rows = dialect.sample.filter((row) => row.length === dialect.width).length;
    if (readable.length === 0 || readable.length < 0.9 * rows) continue;
    const order = dateOrder(readable);
    const dated = { ...plan, shape: 'date-time' as const, dateIndex: index, order };
    if (!Number.isNaN(clockSeconds(`${readable[0]!} 00:00:00`, 'date-time', order))) return dated;
    doubt(label, readable[0]!, issues);
  }
  return plan;
}

function doubt(label: string, field: string, issues: IssueList): void {
  issues.add(
    'date-not-read',
    null,
    () =>
      `Column '${label}' writes dates like '${field.trim()}', which may be day or month first; times are times of day.`,
    label,
  );
}
