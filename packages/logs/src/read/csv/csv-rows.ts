import Papa from 'papaparse';

/** Rows of one piece of a file, in order. */
export interface CsvBatch {
  readonly rows: readonly (readonly string[])[];
  /** 1-based line on which each row begins. */
  readonly lineOf: (index: number) => number;
  /** Rows of a text that opens a quote and never closes it were split at every line end and delimiter instead. */
  readonly openQuote: boolean;
  /** Length of a line that was too long for a log and left out; 0 where there was none. */
  readonly leftOut: number;
}

/** No row of a log is this long; what is longer has an open quote or no line ends. Characters. */
const longestRow = 1 << 16;

/** How a file is cut into rows. */
export interface RowShape {
  readonly delimiter: string;
  readonly newline: '\n' | '\r';
}

/**
 * Cuts the pieces of a file into rows of fields. A row that is torn between two pieces is joined again; nothing else
 * is kept between pieces, so that memory stays small.
 *
 * @param chunks - the text in pieces
 * @param shape - delimiter and line end
 * @returns the rows piece by piece
 */
export function* csvRows(chunks: Iterable<string>, shape: RowShape): Generator<CsvBatch> {
  let rest = '';
  let line = 1;
  for (const chunk of chunks) {
    const batch = cut(rest + chunk, shape, true, line);
    rest = batch.rest;
    line = batch.nextLine;
    yield batch;
  }
  if (rest !== '') yield cut(rest, shape, false, line);
}

interface CutBatch extends CsvBatch {
  readonly rest: string;
  readonly nextLine: number;
}

function cut(text: string, { delimiter, newline }: RowShape, moreComes: boolean, line: number): CutBatch {
  // Only these two settings: with a `header` the parser renames equal fields of the first row.
  const shape = { delimiter, newline };
  const careful = new Papa.Parser({ ...shape, fastMode: !text.includes('"') }).parse(text, 0, moreComes);
  const rest = text.slice(careful.meta.cursor);
  const unclosed = careful.errors.some((error) => error.code === 'MissingQuotes');
  if (!unclosed && rest.length <= longestRow)
    return {
      ...placed(careful.data, line, shape.newline, text.includes('"')),
      rest,
      openQuote: false,
      leftOut: 0,
    };
  const plain = new Papa.Parser({ ...shape, fastMode: true }).parse(text, 0, moreComes);
  const tail = moreComes ? text.slice(plain.meta.cursor) : '';
  const tooLong = tail.length > longestRow;
  return {
    ...placed(plain.data, line, shape.newline, false),
    rest: tooLong ? '' : tail,
    openQuote: text.includes('"'),
    leftOut: tooLong ? tail.length : 0,
  };
}

function placed(
  rows: readonly (readonly string[])[],
  line: number,
  newline: string,
  mayHoldNewlines: boolean,
): Pick<CutBatch, 'rows' | 'lineOf' | 'nextLine'> {
  if (!mayHoldNewlines) return { rows, lineOf: (index) => line + index, nextLine: line + rows.length };
  const lines = new Float64Array(rows.length + 1);
  lines[0] = line;
  rows.forEach((row, index) => {
    const inside = row.reduce((sum, field) => sum + field.split(newline).length - 1, 0);
    lines[index + 1] = lines[index]! + 1 + inside;
  });
  return { rows, lineOf: (index) => lines[index] ?? line, nextLine: lines[rows.length]! };
}
