import { byteRowCutter } from './byte-row-cutter.ts';
import type { CsvPlan } from './csv-plan.ts';
import { fieldText } from './field-text.ts';
import { longMantissa } from './long-mantissa.ts';
import { numberField } from './number-field.ts';
import { rowTaker } from './row-taker.ts';
import type { RowStore } from './row-store.ts';
import { switchField } from './switch-field.ts';
import { timeReader, type ReadTime } from './time-reader.ts';

const [lineFeed, carriageReturn, quote, minus, plus, point, comma] = [10, 13, 34, 45, 43, 46, 44];
/** What is done with a field: nothing, read as a number, kept as text. */
const [skipped, number, text] = [0, 1, 2];
/** So many digits fit into 31 bits whatever they are. */
const shortDigits = 9;
const powers = Float64Array.from({ length: 16 }, (_, exponent) => 10 ** exponent);
/** Bytes; a longer line is no line of a log. */
const longestLine = 1 << 18;

/** One row as it is read. */
interface OpenRow {
  /** Number of fields; -1 where a quotation mark needs the library. */
  count: number;
  /** Values of the fields that are plain decimals, NaN for empty ones. */
  readonly values: Float64Array;
  /** Indices of the fields that must be read as text. */
  readonly odd: Int32Array;
  oddCount: number;
  timeIsOdd: boolean;
  readonly starts: Int32Array;
  readonly ends: Int32Array;
}

/**
 * Reads the rows of a table from its bytes, without making text of them: plain decimals are put together digit by
 * digit, to the same bits as `numberField`; other fields are handed on as text, and rows with quotation marks that
 * do more than stand around a field go through papaparse (`splitRow`).
 *
 * @param plan - how the table is written and what its columns are
 * @param store - where the rows go
 * @returns takes the file piece by piece and whether a piece is the last, and says how many bytes of it were used up; the
 * rest, a torn row, must come again at the beginning of the next piece
 */
export function byteRows(plan: CsvPlan, store: RowStore): (bytes: Uint8Array, isLast: boolean) => number {
  const { dialect, encoding, time, columns } = plan;
  const { width, newline } = dialect;
  const end = newline.charCodeAt(0);
  const textOf = fieldText(encoding);
  const secondsOf = timeReader(time, dialect.decimalComma);
  const kept = new Set([time.index, ...columns.map(({ index }) => index)]);
  const shape = { delimiter: dialect.delimiter, newline };
  const cutAbove = byteRowCutter(textOf, shape);
  const cutRow = byteRowCutter(textOf, { ...shape, isNumber: (index) => kept.has(index) });
  const takeFields = rowTaker(plan, secondsOf, store);
  const readRow = rowReader(plan);
  const takeRow = openRowTaker(plan, textOf, secondsOf, store);
  const open = openRow(width);
  let above = dialect.rowsBeforeData;
  let line = 1;
  let inLongLine = false;

  const carefully = (bytes: Uint8Array, at: number, isLast: boolean): number => {
    const cut = (above > 0 ? cutAbove : cutRow)(bytes, at, isLast);
    if (cut === null) return -1;
    if (above > 0) above -= 1;
    else {
      if (cut.openQuote) store.openQuote(line);
      takeFields(cut.fields, line);
    }
    line += cut.lines;
    return cut.byteEnd;
  };

  /** Reads up to a line end, or to a row that goes on behind it. */
  const readLines = (bytes: Uint8Array, start: number, stop: number, isLast: boolean): number => {
    let at = start;
    while (at < stop) {
      let next = above > 0 ? -1 : readRow(bytes, at, open);
      if (next > 0 && next - at > longestLine) store.longLine(line);
      else if (next > 0 && open.count === width) {
        if (!takeRow(bytes, open, line)) {
          const cut = cutRow(bytes, at, isLast);
          if (cut !== null) takeFields(cut.fields, line);
        }
      } else if (next - at > 1 || next < 0) {
        next = carefully(bytes, at, isLast);
        if (next < 0) return at;
        at = next;
        continue;
      }
      line += 1;
      at = next;
    }
    return at;
  };

  return (bytes, isLast) => {
    let at = 0;
    if (inLongLine) {
      at = bytes.indexOf(end) + 1;
      if (at === 0) return bytes.length;
      inLongLine = false;
      line += 1;
    }
    const stop = bytes.lastIndexOf(end) + 1;
    at = readLines(bytes, at, stop, isLast);
    if (bytes.length - at > longestLine && at >= stop) {
      store.longLine(line);
      inLongLine = true;
      return bytes.length;
    }
    if (!isLast || at >= bytes.length) return at;
    const tail = new Uint8Array(bytes.length - at + 1);
    tail.set(bytes.subarray(at));
    tail[tail.length - 1] = end;
    readLines(tail, 0, tail.length, true);
    return bytes.length;
  };
}

function openRow(width: number): OpenRow {
  return {
    count: 0,
    values: new Float64Array(width),
    odd: new Int32Array(width),
    oddCount: 0,
    timeIsOdd: false,
    starts: new Int32Array(width),
    ends: new Int32Array(width),
  };
}

/** Reads one row that ends in a line end; gives the index behind it, -1 where its quotation marks need the library. */
function rowReader({
  dialect,
  time,
  columns,
}: CsvPlan): (bytes: Uint8Array, start: number, row: OpenRow) => number {
  const { width } = dialect;
  const delimiter = dialect.delimiter.charCodeAt(0);
  const end = dialect.newline === '\n' ? lineFeed : carriageReturn;
  /** A byte in which a carriage return before the line end is passed over. */
  const before = end === lineFeed ? carriageReturn : -1;
  const mark = (dialect.decimalComma ? comma : point) ^ 48;
  const bareMark = (mark ^ 48) === delimiter ? -1 : mark;
  const kinds = new Uint8Array(width);
  for (const { index } of columns) kinds[index] = number;
  kinds[time.index] = time.kind === 'number' ? number : text;
  if (time.kind === 'clock' && time.dateIndex >= 0) kinds[time.dateIndex] = text;
  const timeIndex = time.index;

  return (bytes, start, row) => {
    const { values, odd, starts, ends } = row;
    let at = start;
    let count = 0;
    let oddCount = 0;
    row.timeIsOdd = false;
    for (;;) {
      const kind = count < width ? kinds[count]! : skipped;
      const isQuoted = bytes[at] === quote;
      if (isQuoted) at += 1;
      const from = at;
      let value = NaN;
      if (kind === number) {
        const isNegative = bytes[at] === minus;
        if (isNegative || bytes[at] === plus) at += 1;
        const first = at;
        let mantissa = 0;
        let digit = bytes[at]! ^ 48;
        while (digit < 10) {
          mantissa = (Math.imul(mantissa, 10) + digit) | 0;
          at += 1;
          digit = bytes[at]! ^ 48;
        }
        let digits = at - first;
        let decimals = 0;
        if (digit === (isQuoted ? mark : bareMark)) {
          at += 1;
          digit = bytes[at]! ^ 48;
          while (digit < 10) {
            mantissa = (Math.imul(mantissa, 10) + digit) | 0;
            decimals += 1;
            at += 1;
            digit = bytes[at]! ^ 48;
          }
          digits += decimals;
        }
        if (digits > 0) {
          const whole = digits <= shortDigits ? mantissa : longMantissa(bytes, first, at);
          value = decimals > 0 ? whole / powers[decimals]! : whole;
          if (isNegative) value = -value;
        }
      }
      let byte = bytes[at];
      let to = at;
      if (isQuoted) {
        while (byte !== quote && byte !== end) byte = bytes[(at += 1)];
        if (byte === end) return -1;
        if (at > to) value = NaN;
        to = at;
        byte = bytes[(at += 1)];
        if (byte !== delimiter && byte !== end && !(byte === before && bytes[at + 1] === end)) return -1;
      } else if (byte !== delimiter && byte !== end && !(byte === before && bytes[at + 1] === end)) {
        value = NaN;
        while (byte !== delimiter && byte !== end) byte = bytes[(at += 1)];
        to = at;
      }
      if (kind !== skipped) {
        values[count] = value;
        if (kind === text || (Number.isNaN(value) && to > from)) {
          odd[oddCount] = count;
          oddCount += 1;
          starts[count] = from;
          ends[count] = to;
          if (count === timeIndex) row.timeIsOdd = true;
        }
      }
      count += 1;
      at += 1;
      if (byte === delimiter) continue;
      if (byte === before) at += 1;
      row.count = count;
      row.oddCount = oddCount;
      return at;
    }
  };
}

/** Puts a row of the right number of fields into the store; false where the time is a word, so that it may hold headings. */
function openRowTaker(
  { dialect, time, columns }: CsvPlan,
  textOf: (bytes: Uint8Array, from: number, to: number) => string,
  secondsOf: ReadTime,
  store: RowStore,
): (bytes: Uint8Array, row: OpenRow, line: number) => boolean {
  const { decimalComma, width } = dialect;
  const factor = time.kind === 'number' ? time.factor : NaN;
  const dateIndex = time.kind === 'clock' ? time.dateIndex : -1;
  const indices = Int32Array.from(columns, ({ index }) => index);
  const columnAt = new Int32Array(width).fill(-1);
  columns.forEach(({ index }, column) => {
    columnAt[index] = column;
  });
  const takeOdd = (
    bytes: Uint8Array,
    { odd, oddCount, starts, ends }: OpenRow,
    row: number,
    line: number,
  ): void => {
    for (let i = 0; i < oddCount; i += 1) {
      const field = odd[i]!;
      const column = columnAt[field]!;
      if (column < 0) continue;
      const read = columns[column]!.role === 'brake-switch' ? switchField : numberField;
      const said = textOf(bytes, starts[field]!, ends[field]!);
      const value = read(said, decimalComma);
      store.columns[column]![row] = value;
      if (Number.isNaN(value)) store.noNumber(column, said, line);
    }
  };
  return (bytes, open, line) => {
    const { values, starts, ends } = open;
    const seconds = open.timeIsOdd
      ? secondsOf(
          textOf(bytes, starts[time.index]!, ends[time.index]!),
          dateIndex < 0 ? '' : textOf(bytes, starts[dateIndex]!, ends[dateIndex]!),
        )
      : values[time.index]! * factor;
    if (open.timeIsOdd && Number.isNaN(seconds)) return false;
    const row = store.begin(seconds, line);
    if (row < 0) return true;
    const into = store.columns;
    for (let column = 0; column < into.length; column += 1) into[column]![row] = values[indices[column]!]!;
    if (open.oddCount > 0) takeOdd(bytes, open, row, line);
    return true;
  };
}
