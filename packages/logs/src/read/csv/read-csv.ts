import { issueList } from '../../channels/issue-list.ts';
import { textChunks } from '../bytes/text-chunks.ts';
import { textEncoding } from '../bytes/text-encoding.ts';
import { quotedList, refuseLog } from '../log-refusal.ts';
import type { ReadOptions, ReadOutcome } from '../read-log.ts';
import { columnLabels } from './column-labels.ts';
import type { ColumnPlan } from './column-plan.ts';
import { csvTable, type Fill } from './csv-table.ts';
import { detectDialect } from './detect-dialect.ts';
import { planColumns } from './plan-columns.ts';
import { speedRefusal } from './speed-refusal.ts';
import { timePlan } from './time-plan.ts';
import { isLogUnit } from './unit-scale.ts';

const sampleLength = 1 << 16;

/**
 * Reads a CSV log: any delimiter, decimal sign, headings, row of units; the rows streamed, so that a large
 * file is never one string. What is skipped is counted with the first line that shows it.
 *
 * @param bytes - the whole file
 * @param options - name and a person's word on the columns
 * @param fill - the way to read the rows; chosen by the file where absent
 * @returns the channel table, or why the file can't be used
 */
export function readCsv(bytes: Uint8Array, options: ReadOptions, fill?: Fill): ReadOutcome {
  const encoding = textEncoding(bytes);
  const [start = ''] = textChunks(bytes.subarray(0, sampleLength), encoding);
  const dialect = detectDialect(start, bytes.length <= sampleLength, isLogUnit);
  if (dialect === null)
    return refuseLog(
      'log-not-a-table',
      options.name,
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
  const choices = choicesOf(options);
  const plans = planColumns({ name: options.name, dialect, labels, choices, issues });
  if (!plans.ok) return plans;
  const time = timePlan(dialect, plans.columns, issues);
  if (time === null)
    return refuseLog(
      'log-no-time',
      options.name,
      `has no column that tells the time; its columns are ${quotedList(labels)}. Say which one is the time.`,
    );
  const columns = plans.columns
    .filter(({ index }) => index !== time.index)
    .map(withScale(options.speedScale));
  const speedTrouble = speedRefusal(options.name, columns, labels);
  if (speedTrouble !== null) return speedTrouble;
  const usable = columns.filter(({ isText }) => !isText).map(withoutDoubtfulSpeed);
  const headings = dialect.header.length === 0 ? null : labels.join(' | ');
  const planned = { bytes, encoding, dialect, time, columns: usable, headings, issues, name: options.name };
  return csvTable(planned, fill);
}

function choicesOf(options: ReadOptions): NonNullable<ReadOptions['columns']> {
  const columns = options.columns ?? {};
  return options.timeColumn === undefined || columns.time !== undefined
    ? columns
    : { ...columns, time: { name: options.timeColumn } };
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
