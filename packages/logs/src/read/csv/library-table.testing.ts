import Papa from 'papaparse';
import type { ReadOutcome } from '../read-log.ts';
import { csvTable } from './csv-table.ts';
import { planCsv } from './plan-csv.ts';
import { rowTaker } from './row-taker.ts';
import { RowStore } from './row-store.ts';
import { startsAtZero, timeReader } from './time-reader.ts';

interface LibraryRow {
  readonly fields: readonly string[];
  readonly line: number;
  readonly openQuote: boolean;
}

interface LibraryShape {
  readonly delimiter: string;
  readonly newline: '\n' | '\r';
}

/**
 * A table as papaparse alone reads it, the whole text at once: what reading by bytes is held to. Where papaparse says
 * that quotation marks are wrong, or lets a number run over a line end, that one line stands alone.
 *
 * @param bytes - the file
 * @returns the table, or the refusal
 */
export function libraryTable(bytes: Uint8Array): ReadOutcome {
  const plan = planCsv(bytes, bytes.length, { name: 'made' });
  if (!plan.ok) return plan;
  const { dialect, time, columns, issues } = plan;
  const store = new RowStore({
    columns,
    issues,
    width: dialect.width,
    zero: startsAtZero(time) ? 0 : null,
    capacity: 4,
  });
  const take = rowTaker(plan, timeReader(time, dialect.decimalComma), store);
  const isKept = (index: number): boolean =>
    index === time.index || columns.some((column) => column.index === index);
  const rows = libraryRows(
    new TextDecoder(plan.fileEncoding).decode(bytes),
    dialect,
    isKept,
    dialect.rowsBeforeData,
  );
  for (const { fields, line, openQuote } of rows.slice(dialect.rowsBeforeData)) {
    if (openQuote) store.openQuote(line);
    take(fields, line);
  }
  return csvTable(plan, store, bytes.length);
}

function libraryRows(
  text: string,
  shape: LibraryShape,
  isKept: (index: number) => boolean,
  above: number,
): readonly LibraryRow[] {
  const rows: LibraryRow[] = [];
  let [rest, line] = [text, 1];
  while (rest !== '') {
    const { data, errors } = parsed(rest, shape);
    const wrong = Math.min(
      ...errors.map(({ row = 0 }) => row),
      ...data.flatMap((fields, row) =>
        rows.length + row >= above &&
        fields.some((field, index) => isKept(index) && field.trim().includes(shape.newline))
          ? [row]
          : [],
      ),
    );
    for (const fields of data.slice(0, wrong)) {
      rows.push({ fields, line, openQuote: false });
      const lines = 1 + fields.join('').split(shape.newline).length - 1;
      for (let i = 0; i < lines; i += 1) rest = rest.slice(lineLength(rest, shape));
      line += lines;
    }
    if (wrong === Infinity) break;
    const length = lineLength(rest, shape);
    rows.push({ ...lineAlone(rest.slice(0, length), shape), line });
    rest = rest.slice(length);
    line += 1;
  }
  return rows;
}

function lineAlone(text: string, shape: LibraryShape): Omit<LibraryRow, 'line'> {
  const bare = text.endsWith(shape.newline) ? text.slice(0, -1) : text;
  const { data, errors } = parsed(bare + shape.newline, shape);
  return errors.some(({ code }) => code === 'MissingQuotes') || data.length !== 2
    ? { fields: bare.split(shape.delimiter), openQuote: true }
    : { fields: data[0]!, openQuote: false };
}

function lineLength(text: string, { newline }: LibraryShape): number {
  const end = text.indexOf(newline);
  return end < 0 ? text.length : end + 1;
}

function parsed(text: string, { delimiter, newline }: LibraryShape): Papa.ParseResult<readonly string[]> {
  return new Papa.Parser({ delimiter, newline, fastMode: false }).parse(text, 0, false);
}
