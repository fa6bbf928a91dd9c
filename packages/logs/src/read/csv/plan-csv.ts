import { issueList, type IssueList } from '../../channels/issue-list.ts';
import { textChunks } from '../bytes/text-chunks.ts';
import { textEncoding } from '../bytes/text-encoding.ts';
import { refuseLog, type LogRefusal } from '../log-refusal.ts';
import type { ReadOptions } from '../read-log.ts';
import { columnLabels } from './column-labels.ts';
import type { ColumnPlan } from './column-plan.ts';
import type { CsvPlan } from './csv-plan.ts';
import { detectDialect } from './detect-dialect.ts';
import { planColumns } from './plan-columns.ts';
import { planTime } from './plan-time.ts';
import { speedRefusal } from './speed-refusal.ts';
import { timeRefusal } from './time-refusal.ts';
import type { TimePlan } from './time-plan.ts';
import { isLogUnit } from './unit-scale.ts';

/** Bytes from the beginning that the dialect is found from. */
const sampleLength = 1 << 16;

/**
 * Decides from the beginning of a CSV file how it is to be read.
 *
 * @param head - the first megabyte of the file
 * @param size - bytes of the whole file
 * @param options - name and a person's word on the columns
 * @returns the plan, or why the file can't be used
 */
export function planCsv(head: Uint8Array, size: number, options: ReadOptions): CsvPlan | LogRefusal {
  const { name } = options;
  const encoding = textEncoding(head);
  const [start = ''] = textChunks(head.subarray(0, sampleLength), encoding);
  const dialect = detectDialect(start, size <= sampleLength, isLogUnit);
  if (dialect === null)
    return refuseLog(
      'log-not-a-table',
      name,
      'is neither NMEA 0183 nor a table with commas, semicolons, tabs or bars between its columns; export the log as CSV.',
    );
  const issues = issueList();
  if (dialect.preambleRows > 0)
    issues.add(
      'lines-above-headings',
      1,
      () => `${dialect.preambleRows} lines above the headings were not read.`,
    );
  const labels = columnLabels(dialect, dialect.preambleRows + 1, issues);
  const plans = planColumns({ name, dialect, labels, choices: choicesOf(options), issues });
  if (!plans.ok) return plans;
  const time = planTime(dialect, plans.columns, issues);
  if (time === null) return timeRefusal(name, dialect, plans.columns, labels);
  reportTextColumns(plans.columns, time, issues);
  const columns = plans.columns
    .filter(({ index }) => index !== time.index)
    .map(withScale(options.speedScale));
  const speedTrouble = speedRefusal(name, columns, labels);
  if (speedTrouble !== null) return speedTrouble;
  return {
    ok: true,
    name,
    encoding: encoding === 'windows-1252' ? encoding : 'utf-8',
    fileEncoding: encoding,
    dialect,
    time,
    columns: columns.filter(({ isText }) => !isText).map(withoutDoubtfulSpeed),
    headings: dialect.header.length === 0 ? null : labels.join(' | '),
    issues,
    rowLength: Math.min(size, sampleLength) / (dialect.sample.length + dialect.rowsBeforeData),
  };
}

function choicesOf(options: ReadOptions): NonNullable<ReadOptions['columns']> {
  const columns = options.columns ?? {};
  return options.timeColumn === undefined || columns.time !== undefined
    ? columns
    : { ...columns, time: { name: options.timeColumn } };
}

function reportTextColumns(columns: readonly ColumnPlan[], time: TimePlan, issues: IssueList): void {
  const dateIndex = time.kind === 'clock' ? time.dateIndex : -1;
  for (const { index, label, isText } of columns)
    if (isText && index !== time.index && index !== dateIndex)
      issues.add(
        'text-column',
        null,
        () => `Column '${label}' holds words; only its heading is kept.`,
        label,
      );
}

/** A scale given for a speed without a unit. */
function withScale(scale: number | undefined): (plan: ColumnPlan) => ColumnPlan {
  if (scale === undefined) return (plan) => plan;
  return (plan) => (Number.isFinite(plan.factor) ? plan : { ...plan, unitOrigin: 'given', factor: scale });
}

/** Beside a speed with a unit, one without is kept as it stands and not used. */
function withoutDoubtfulSpeed(plan: ColumnPlan): ColumnPlan {
  return Number.isFinite(plan.factor) ? plan : { ...plan, role: 'unknown', factor: 1 };
}
