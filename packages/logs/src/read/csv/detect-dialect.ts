import { clockShape } from '../time/clock-shape.ts';
import type { CsvDialect } from './csv-dialect.ts';
import { isGapWord, numberField } from './number-field.ts';
import { splitRow, type RowShape } from './split-row.ts';

const delimiters = [',', ';', '\t', '|'] as const;

interface Candidate {
  readonly rows: readonly (readonly string[])[];
  readonly delimiter: string;
  readonly decimalComma: boolean;
  readonly width: number;
  readonly score: number;
}

/**
 * Finds out how a CSV file is written from its first rows: the delimiter and decimal sign that make the most regular
 * table of numbers, then the rows of headings and units above the first row of data.
 *
 * @param text - the beginning of the file, about 64 kB
 * @param complete - whether that is the whole file; else its last, torn row is not looked at
 * @param isUnit - whether a text is a unit that a log may use
 * @returns the dialect; null where nothing looks like a table
 */
export function detectDialect(
  text: string,
  complete: boolean,
  isUnit: (text: string) => boolean,
): CsvDialect | null {
  const newline = text.includes('\n') ? '\n' : '\r';
  const whole = complete ? text : text.slice(0, text.lastIndexOf(newline) + 1);
  const candidates = delimiters
    .filter((delimiter) => whole.includes(delimiter))
    .flatMap((delimiter) => {
      const rows = rowsOf(whole, { delimiter, newline });
      return [false, true]
        .filter((decimalComma) => !(decimalComma && delimiter === ',' && !whole.includes('"')))
        .map((decimalComma) => candidate(rows.map(withoutReturn), delimiter, decimalComma));
    });
  const best = candidates.reduce<Candidate | null>(
    (found, next) => (next.score > (found?.score ?? 0) ? next : found),
    null,
  );
  return best === null ? null : described(best, newline, isUnit);
}

function rowsOf(text: string, shape: RowShape): readonly (readonly string[])[] {
  if (!text.includes('"')) return text.split(shape.newline).map((line) => line.split(shape.delimiter));
  const rows: (readonly string[])[] = [];
  for (let at = 0; at < text.length;) {
    const row = splitRow(text, at, shape, true)!;
    rows.push(row.fields);
    at = row.end;
  }
  return rows;
}

/** The rows of a file whose lines end in CR LF carry the CR in their last field. */
function withoutReturn(row: readonly string[]): readonly string[] {
  const last = row[row.length - 1];
  return last?.endsWith('\r') === true ? [...row.slice(0, -1), last.slice(0, -1)] : row;
}

function candidate(
  rows: readonly (readonly string[])[],
  delimiter: string,
  decimalComma: boolean,
): Candidate {
  const width = usualWidth(rows);
  const regular = rows.filter((row) => row.length === width);
  const cells = regular.flat().filter((field) => !isGapWord(field));
  const valued = cells.filter((field) => isValue(field, decimalComma)).length;
  const share = rows.length === 0 ? 0 : regular.length / rows.length;
  const score = width < 2 ? 0 : share * (0.05 + valued / Math.max(1, cells.length));
  return { rows, delimiter, decimalComma, width, score };
}

/** The commonest number of fields; of two equally common ones the greater. */
function usualWidth(rows: readonly (readonly string[])[]): number {
  const counts = new Map<number, number>();
  for (const row of rows) if (row.length > 1) counts.set(row.length, (counts.get(row.length) ?? 0) + 1);
  return [...counts].reduce(
    (best, next) => (next[1] > best[1] || (next[1] === best[1] && next[0] > best[0]) ? next : best),
    [0, 0],
  )[0];
}

function described(
  { rows, delimiter, decimalComma, width }: Candidate,
  newline: '\n' | '\r',
  isUnit: (text: string) => boolean,
): CsvDialect | null {
  const first = rows.findIndex((row, index) => isData(row) && (index === 0 || later(index)));
  if (first < 0) return null;
  const above = rows.slice(0, first);
  const unitRow = above.length > 1 && isUnitRow(above[above.length - 1]!, above[above.length - 2]!, isUnit);
  const headerIndex = above.length - (unitRow ? 2 : 1);
  const header = headerIndex >= 0 && above[headerIndex]!.length > 1 ? above[headerIndex]! : [];
  return {
    delimiter,
    newline,
    decimalComma,
    header,
    units: unitRow ? above[above.length - 1]! : [],
    rowsBeforeData: first,
    preambleRows: Math.max(0, headerIndex),
    width,
    sample: rows.slice(first),
  };

  function isData(row: readonly string[]): boolean {
    const filled = row.filter((field) => !isGapWord(field));
    const valued = filled.filter((field) => isValue(field, decimalComma)).length;
    return row.length === width && valued > 0 && valued * 2 >= filled.length;
  }
  function later(index: number): boolean {
    return rows.length - index < 3 || rows.slice(index + 1, index + 6).some(isData);
  }
}

function isUnitRow(
  row: readonly string[],
  header: readonly string[],
  isUnit: (text: string) => boolean,
): boolean {
  const bare = row
    .map((field) => field.trim().replace(/^[[({<]|[\])}>]$/g, ''))
    .filter((field) => field !== '');
  const known = bare.filter((field) => isUnit(field) || field === '-' || field === '#').length;
  return header.length === row.length && bare.length > 0 && known * 2 >= bare.length;
}

function isValue(field: string, decimalComma: boolean): boolean {
  return !Number.isNaN(numberField(field, decimalComma)) || clockShape(field) !== null;
}
