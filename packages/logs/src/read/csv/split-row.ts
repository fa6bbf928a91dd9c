import Papa from 'papaparse';

/** How a table is cut into rows. */
export interface RowShape {
  readonly delimiter: string;
  readonly newline: '\n' | '\r';
  /** Whether a field stands in a column of numbers, where a value can't run over a line end. */
  readonly isNumber?: (index: number) => boolean;
}

/** One row that was cut off the beginning of a text. */
export interface CutRow {
  readonly fields: readonly string[];
  /** Index of the first character behind the row and its line end. */
  readonly end: number;
  /** Lines that it takes. */
  readonly lines: number;
  /** A quotation mark in it is not closed as it should be; the line was split at its delimiters. */
  readonly openQuote: boolean;
}

/** Characters; a quoted row that is longer has an open quote. */
export const longestQuotedRow = 1 << 16;

/**
 * Cuts one row off a text: its extent by the marks, its fields by papaparse. A row whose quotation marks are not
 * closed, or not closed as they should be before its line ends, is one line and split at every delimiter, because
 * any other reading would take values out of the lines below.
 *
 * @param text - where the row begins
 * @param at - index of its first character
 * @param shape - delimiter and line end
 * @param isWhole - whether nothing follows the text
 * @returns the row; null where the text ends before the row does
 */
export function splitRow(text: string, at: number, shape: RowShape, isWhole: boolean): CutRow | null {
  const lineEnd = text.indexOf(shape.newline, at);
  if (lineEnd < 0 && !isWhole && text.length - at <= longestQuotedRow) return null;
  const first = lineEnd < 0 ? text.length : lineEnd + 1;
  if (!opensQuote(text, at, first)) return plainRow(text, at, first, shape, false);
  const end = quotedEnd(text, at, shape, isWhole);
  if (end === 'torn') return null;
  return (
    (end === 'open' ? null : libraryRow(text, at, end, shape)) ??
    libraryRow(text, at, first, shape) ??
    plainRow(text, at, first, shape, true)
  );
}

function opensQuote(text: string, from: number, to: number): boolean {
  const quote = text.indexOf('"', from);
  return quote >= 0 && quote < to;
}

function withoutNewline(text: string, newline: string): string {
  return text.endsWith(newline) ? text.slice(0, -1) : text;
}

function plainRow(text: string, at: number, end: number, shape: RowShape, openQuote: boolean): CutRow {
  const line = withoutNewline(text.slice(at, end), shape.newline);
  return { fields: line.split(shape.delimiter), end, lines: 1, openQuote };
}

/** The row as papaparse splits it; null where it finds more or less than one row, or a line end in a number. */
function libraryRow(text: string, at: number, end: number, shape: RowShape): CutRow | null {
  const { delimiter, newline, isNumber } = shape;
  const row = withoutNewline(text.slice(at, end), newline) + newline;
  // Only these settings: with a `header` the parser renames equal fields of the first row.
  const { data, errors } = new Papa.Parser({ delimiter, newline, fastMode: false }).parse(row, 0, false);
  const [fields = [], ...rest] = data;
  if (rest.length > 1 || rest[0]?.join('') !== '' || errors.some(({ code }) => code === 'MissingQuotes'))
    return null;
  if (
    isNumber !== undefined &&
    fields.some((field, index) => field.trim().includes(newline) && isNumber(index))
  )
    return null;
  return { fields, end, lines: row.split(newline).length - 1, openQuote: false };
}

/** Where a row with quoted fields ends, if each of them is closed right before a delimiter or line end. */
function quotedEnd(text: string, start: number, shape: RowShape, isWhole: boolean): number | 'open' | 'torn' {
  const { delimiter, newline } = shape;
  const limit = Math.min(text.length, start + longestQuotedRow);
  const short = isWhole || limit < text.length ? 'open' : 'torn';
  let at = start;
  for (;;) {
    if (text[at] === '"') {
      const close = closingQuote(text, at, limit);
      if (close < 0) return short;
      at = close + 1;
      while (at < limit && text[at] !== delimiter && text[at] !== newline && text[at]!.trim() === '') at += 1;
      if (at < limit && text[at] !== delimiter && text[at] !== newline) return 'open';
    } else while (at < limit && text[at] !== delimiter && text[at] !== newline) at += 1;
    if (at >= limit) return isWhole && limit === text.length ? limit : short;
    at += 1;
    if (text[at - 1] === newline) return at;
  }
}

/** Index of the quotation mark that closes a field; -1 where none does up to the limit. */
function closingQuote(text: string, open: number, limit: number): number {
  let at = open + 1;
  for (;;) {
    at = text.indexOf('"', at);
    if (at < 0 || at >= limit) return -1;
    if (text[at + 1] !== '"') return at;
    at += 2;
  }
}
