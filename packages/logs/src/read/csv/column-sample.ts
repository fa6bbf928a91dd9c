import type { CsvDialect } from './csv-dialect.ts';
import { isGapWord, numberField } from './number-field.ts';

/** The first values of one column. */
export interface ColumnSample {
  readonly fields: readonly string[];
  readonly numbers: readonly number[];
  /** More words than numbers stand in the column. */
  readonly isText: boolean;
}

/**
 * Looks at the first values of a column.
 *
 * @param dialect - the file's dialect with its first rows
 * @param index - which column, from 0
 * @returns what stands there, gaps left out
 */
export function sampleOf(dialect: CsvDialect, index: number): ColumnSample {
  const fields = dialect.sample
    .filter((row) => row.length === dialect.width)
    .map((row) => row[index]!.trim())
    .filter((field) => !isGapWord(field));
  const numbers = fields
    .map((field) => numberField(field, dialect.decimalComma))
    .filter((value) => !Number.isNaN(value));
  return { fields, numbers, isText: numbers.length * 2 < fields.length };
}
