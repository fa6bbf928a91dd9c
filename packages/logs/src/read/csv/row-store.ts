import type { IssueList } from '../../channels/issue-list.ts';
import { clockSteps, type ClockSteps } from '../time/clock-steps.ts';
import { finishedTime, type FinishedTime } from '../time/finished-time.ts';
import type { ColumnPlan } from './column-plan.ts';
import { isGapWord } from './number-field.ts';

/** What a store of rows is made for. */
export interface RowStoreOptions {
  readonly columns: readonly ColumnPlan[];
  readonly issues: IssueList;
  /** Fields that a row should have. */
  readonly width: number;
  /** s on the source's clock that becomes time 0; null takes the first row's. */
  readonly zero: number | null;
  /** Rows to make room for. */
  readonly capacity: number;
  /** Called when no room is left, to take the rows and drop some; without it the store grows. */
  readonly onFull?: (store: RowStore) => void;
}

/**
 * Where the rows of a table go, however they are read: puts them on the time base, keeps their values, counts what is
 * skipped. A reader begins a row and then writes its values into `columns` itself, one array a column, so that nothing
 * is called for a value.
 */
export class RowStore {
  /** s; only the first `count` are filled, here and in `columns`. */
  time: Float64Array;
  readonly columns: Float64Array[];
  /** Rows that are held. */
  count = 0;
  /** Rows that were held and dropped. */
  dropped = 0;
  readonly #options: RowStoreOptions;
  readonly #steps: ClockSteps;
  #scaled = 0;
  /** What stands above the rows that are no longer taken; null while they are. */
  #otherHeadings: { readonly line: number; readonly text: string } | null = null;

  constructor(options: RowStoreOptions) {
    const capacity = Math.max(16, options.capacity);
    this.#options = options;
    this.#steps = clockSteps(options.zero);
    this.time = new Float64Array(capacity);
    this.columns = options.columns.map(() => new Float64Array(capacity));
  }

  /**
   * Begins a row.
   * @param seconds - s on the source's clock; NaN where it can't be read
   * @param line - of the file
   * @returns where in `columns` its values belong; -1 where it does not count
   */
  begin(seconds: number, line: number): number {
    const { issues } = this.#options;
    if (this.#otherHeadings !== null) {
      this.#skipOther(this.#otherHeadings, line);
      return -1;
    }
    if (Number.isNaN(seconds)) {
      issues.add('row-without-time', line, () => 'Rows whose time can not be read were skipped.');
      return -1;
    }
    if (this.count === this.time.length) this.#makeRoom();
    const row = this.count;
    const placed = this.#steps.place(seconds, this.dropped + row, row === 0 ? NaN : this.time[row - 1]!);
    if (Number.isNaN(placed)) {
      issues.add('repeated-time', line, () => 'Rows at the very time of the row before were skipped.');
      return -1;
    }
    this.time[row] = placed;
    this.count = row + 1;
    return row;
  }

  /** Takes no further row: below other headings stands another log. */
  stopAt(headings: string, line: number): void {
    this.#otherHeadings ??= { line, text: headings };
  }

  #skipOther({ line, text }: { readonly line: number; readonly text: string }, skipped: number): void {
    this.#options.issues.add(
      'other-headings',
      skipped,
      () =>
        `Line ${line} holds other headings (${text}) than the file begins with: what stands below it is another log and was not read; cut the file in two.`,
    );
  }

  /** Takes a field that gave no number: a gap where it is empty or says so, else something to be told. */
  noNumber(column: number, text: string, line: number): void {
    if (isGapWord(text)) return;
    const { label } = this.#options.columns[column]!;
    this.#options.issues.add(
      'not-a-number',
      line,
      () => `Column '${label}' holds fields that are no numbers; they are gaps.`,
      label,
    );
  }

  raggedRow(line: number): void {
    const { width, issues } = this.#options;
    issues.add('ragged-row', line, () => `Rows with more or fewer than ${width} fields were skipped.`);
  }

  openQuote(line: number): void {
    this.#options.issues.add(
      'open-quote',
      line,
      () => 'A quotation mark is not closed as it should be; its line was split without minding it.',
    );
  }

  longLine(line: number): void {
    this.#options.issues.add('long-line', line, () => 'A line far too long for a log was skipped.');
  }

  /** The times of the rows that are held, in segments. */
  finishTime(): FinishedTime {
    const held = this.#steps.jumps
      .filter(
        ({ row }, index, jumps) => (jumps[index + 1]?.row ?? Infinity) > this.dropped || row >= this.dropped,
      )
      .map(({ row, offset }) => ({ row: Math.max(0, row - this.dropped), offset }));
    return finishedTime(trimmed(this.time, this.count), held);
  }

  /** The values of the rows that are held, in SI, one array a column. */
  finishColumns(): readonly Float64Array[] {
    this.#options.columns.forEach(({ factor, shift }, index) => {
      const values = this.columns[index]!;
      if (factor === 1 && shift === 0) return;
      for (let row = this.#scaled; row < this.count; row += 1) values[row] = values[row]! * factor + shift;
    });
    this.#scaled = this.count;
    return this.columns.map((values) => trimmed(values, this.count));
  }

  /** How often the clock jumped back so far. */
  get jumpsBack(): number {
    return this.#steps.jumps.length - 1;
  }

  /** Forgets the first rows. What was given out before is overwritten. */
  drop(rows: number): void {
    this.time.copyWithin(0, rows, this.count);
    for (const values of this.columns) values.copyWithin(0, rows, this.count);
    this.count -= rows;
    this.dropped += rows;
    this.#scaled = Math.max(0, this.#scaled - rows);
  }

  #makeRoom(): void {
    if (this.#options.onFull !== undefined) this.#options.onFull(this);
    if (this.count < this.time.length) return;
    const capacity = Math.ceil(this.time.length * 1.5);
    this.time = grown(this.time, capacity);
    this.columns.forEach((values, index) => {
      this.columns[index] = grown(values, capacity);
    });
  }
}

function grown(values: Float64Array, capacity: number): Float64Array {
  const larger = new Float64Array(capacity);
  larger.set(values);
  return larger;
}

/** The filled part; without the rest in memory where that is much. */
function trimmed(values: Float64Array, count: number): Float64Array {
  return count < 0.9 * values.length ? values.slice(0, count) : values.subarray(0, count);
}
