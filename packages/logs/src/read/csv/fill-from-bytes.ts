import type { PlannedTable } from './csv-table.ts';
import { numberField } from './number-field.ts';
import type { RowSink } from './row-sink.ts';
import { switchField } from './switch-field.ts';
import { timeReader } from './time-reader.ts';

const [lineFeed, carriageReturn, blank, quote, minus, plus, point, comma] = [10, 13, 32, 34, 45, 43, 46, 44];
/** Up to 15 digits over an exact power of ten round correctly in one division, see `numberField`. */
const mostDigits = 15;
const powers = Float64Array.from({ length: mostDigits + 1 }, (_, exponent) => 10 ** exponent);

/** Whether a table can be read by its bytes: one byte a sign where it matters, and no quotation mark anywhere. */
export function isPlainBytes({ bytes, encoding }: PlannedTable): boolean {
  return !encoding.startsWith('utf-16') && bytes.indexOf(quote) < 0;
}

/** One row as it is read: where its fields lie, and the values of those that are plain decimals. */
interface OpenRow {
  /** Number of fields so far. */
  count: number;
  /** Whether anything but blanks stands in the row, and behind its last planned field. */
  isFilled: boolean;
  tailIsFilled: boolean;
  readonly starts: Int32Array;
  readonly ends: Int32Array;
  readonly values: Float64Array;
  /** 1 where the field is a plain decimal. */
  readonly isPlain: Uint8Array;
}

/**
 * Reads the rows of a table from its bytes, without making text of them: plain decimals are put together digit by
 * digit, to the same bits as `numberField`; every other field is handed to `numberField` as text. Only for tables
 * without quotation marks (`isPlainBytes`); there a row ends at a line end and a field at a delimiter, always.
 *
 * @param table - the file and what its columns are
 * @param sink - where the rows go
 */
export function fillFromBytes(table: PlannedTable, sink: RowSink): void {
  const { bytes, dialect } = table;
  const { width } = dialect;
  const delimiter = dialect.delimiter.charCodeAt(0);
  const end = dialect.newline === '\n' ? lineFeed : carriageReturn;
  const finishRow = rowFinisher(table, sink);
  const row: OpenRow = {
    count: 0,
    isFilled: false,
    tailIsFilled: false,
    starts: new Int32Array(width),
    ends: new Int32Array(width),
    values: new Float64Array(width),
    isPlain: new Uint8Array(width),
  };
  const mark = dialect.decimalComma ? comma : point;
  let at = 0;
  let line = 1;
  while (line <= dialect.rowsBeforeData && at < bytes.length) {
    const next = bytes.indexOf(end, at);
    at = next < 0 ? bytes.length : next + 1;
    line += 1;
  }
  while (at < bytes.length) {
    at = readField(bytes, at, delimiter, end, mark, row);
    if (at < bytes.length && bytes[at] === delimiter) {
      at += 1;
      if (at < bytes.length) continue;
      row.count += 1;
    }
    finishRow(row, line);
    row.count = 0;
    row.isFilled = false;
    row.tailIsFilled = false;
    at += 1;
    line += 1;
  }
}

/** Reads one field and gives the place of the delimiter or line end behind it. */
function readField(
  bytes: Uint8Array,
  start: number,
  delimiter: number,
  end: number,
  mark: number,
  row: OpenRow,
): number {
  let at = start;
  let byte = bytes[at]!;
  const isNegative = byte === minus;
  if (isNegative || byte === plus) at += 1;
  let mantissa = 0;
  let digits = 0;
  let decimals = -1;
  for (; at < bytes.length; at += 1) {
    byte = bytes[at]!;
    if (byte >= 48 && byte <= 57) {
      mantissa = mantissa * 10 + (byte - 48);
      digits += 1;
      if (decimals >= 0) decimals += 1;
    } else if (byte === mark && decimals < 0) decimals = 0;
    else break;
  }
  let isPlain = digits > 0 && digits <= mostDigits;
  if (at < bytes.length && byte === carriageReturn && end === lineFeed && bytes[at + 1] === lineFeed) {
    close(bytes, row, start, at, isPlain, isNegative, mantissa, decimals);
    return at + 1;
  }
  while (at < bytes.length && bytes[at] !== delimiter && bytes[at] !== end) {
    isPlain = false;
    at += 1;
  }
  const last =
    end === lineFeed && bytes[at] === end && bytes[at - 1] === carriageReturn && at > start ? at - 1 : at;
  close(bytes, row, start, last, isPlain, isNegative, mantissa, decimals);
  return at;
}

function isFilled(bytes: Uint8Array, start: number, end: number): boolean {
  for (let at = start; at < end; at += 1) if (bytes[at]! > blank) return true;
  return false;
}

function close(
  bytes: Uint8Array,
  row: OpenRow,
  start: number,
  end: number,
  isPlain: boolean,
  isNegative: boolean,
  mantissa: number,
  decimals: number,
): void {
  const { count } = row;
  row.count += 1;
  if (isPlain || isFilled(bytes, start, end)) {
    row.isFilled = true;
    if (count >= row.starts.length) row.tailIsFilled = true;
  }
  if (count >= row.starts.length) return;
  row.starts[count] = start;
  row.ends[count] = end;
  row.isPlain[count] = isPlain ? 1 : 0;
  if (!isPlain) return;
  const size = decimals > 0 ? mantissa / powers[decimals]! : mantissa;
  row.values[count] = isNegative ? -size : size;
}

function rowFinisher(table: PlannedTable, sink: RowSink): (row: OpenRow, line: number) => void {
  const { bytes, encoding, dialect, columns, time } = table;
  const { width, decimalComma } = dialect;
  const decoder = new TextDecoder(encoding);
  const secondsOf = timeReader(time, decimalComma);
  const factor = time.kind === 'number' ? time.factor : NaN;
  const text = (row: OpenRow, index: number): string =>
    decoder.decode(bytes.subarray(row.starts[index], row.ends[index]));
  return (row, line) => {
    if (row.count !== width && !(row.count === width + 1 && !row.tailIsFilled)) {
      if (row.isFilled) sink.raggedRow(line);
      return;
    }
    const isNumber = time.kind === 'number' && row.isPlain[time.index] === 1;
    const seconds = isNumber ? row.values[time.index]! * factor : secondsOf(text(row, time.index));
    if (!sink.beginRow(seconds, line)) return;
    for (let column = 0; column < columns.length; column += 1) {
      const { index, role } = columns[column]!;
      if (row.isPlain[index] === 1) {
        sink.value(column, row.values[index]!);
        continue;
      }
      const field = text(row, index);
      const value =
        role === 'brake-switch' ? switchField(field, decimalComma) : numberField(field, decimalComma);
      sink.value(column, value);
      if (Number.isNaN(value)) sink.noNumber(column, field, line);
    }
  };
}
