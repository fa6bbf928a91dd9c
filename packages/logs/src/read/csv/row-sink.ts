import { GrowingColumn } from '../../channels/growing-column.ts';
import type { IssueList } from '../../channels/issue-list.ts';
import { timeBase, type FinishedTime } from '../time/time-base.ts';
import type { ColumnPlan } from './column-plan.ts';
import type { CsvDialect } from './csv-dialect.ts';
import { isGapWord } from './number-field.ts';

/** Where rows go, however they are read: puts them on the time base, keeps their values, counts what is skipped. */
export interface RowSink {
  /** @returns whether the row counts; then its values follow */
  readonly beginRow: (seconds: number, line: number) => boolean;
  /** Takes the value of one of the planned columns, NaN for none, in every row that counts. */
  readonly value: (column: number, value: number) => void;
  /** Takes a field that gave no number: a gap where it is empty or says so, else something to be told. */
  readonly noNumber: (column: number, text: string, line: number) => void;
  readonly raggedRow: (line: number) => void;
  readonly finishTime: () => FinishedTime;
  readonly finishColumn: (column: number) => Float64Array;
}

/**
 * Makes the sink of a table's rows.
 *
 * @param columns - plans of the columns that are kept
 * @param issues - where skipped rows and fields are counted
 * @param dialect - for the number of fields that a row should have
 * @param zero - s on the source's clock that becomes time 0; null takes the first row's
 * @returns the sink
 */
export function rowSink(
  columns: readonly ColumnPlan[],
  issues: IssueList,
  { width }: CsvDialect,
  zero: number | null,
): RowSink {
  const base = timeBase(zero);
  const stores = columns.map(() => new GrowingColumn());
  return {
    beginRow: (seconds, line) => {
      if (Number.isNaN(seconds)) {
        issues.add('row-without-time', line, () => 'Rows whose time can not be read were skipped.');
        return false;
      }
      if (base.offer(seconds)) return true;
      issues.add('repeated-time', line, () => 'Rows at the very time of the row before were skipped.');
      return false;
    },
    value: (column, value) => stores[column]!.push(value),
    noNumber: (column, text, line) => {
      if (isGapWord(text)) return;
      const { label } = columns[column]!;
      issues.add(
        'not-a-number',
        line,
        () => `Column '${label}' holds fields that are no numbers; they are gaps.`,
        label,
      );
    },
    raggedRow: (line) =>
      issues.add('ragged-row', line, () => `Rows with more or fewer than ${width} fields were skipped.`),
    finishTime: base.finish,
    finishColumn: (column) => stores[column]!.finish(),
  };
}
