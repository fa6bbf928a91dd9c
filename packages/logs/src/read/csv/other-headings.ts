import type { CsvDialect } from './csv-dialect.ts';
import { guessQuantity } from './guess-quantity.ts';
import { isGapWord, numberField } from './number-field.ts';

/**
 * Tells whether a row among the data is a row of headings unlike the file's own, as where two logs were pasted into one:
 * what stands below it may be other columns or other units under the same number of fields.
 *
 * @param dialect - how the file is written, with its headings and units
 * @returns asks it of the fields of a row
 */
export function otherHeadings(dialect: CsvDialect): (fields: readonly string[]) => boolean {
  const own = [dialect.header, dialect.units].map(bare);
  return (fields) => {
    const words = bare(fields);
    if (words.some((word) => !isGapWord(word) && !Number.isNaN(numberField(word, dialect.decimalComma))))
      return false;
    if (own.some((row) => row.length > 0 && row.every((word, index) => word === (words[index] ?? ''))))
      return false;
    const named = words.filter(isNamed);
    return named.length >= 2;
  };
}

/** Whether a heading, its unit in brackets left aside, names something that a log holds. */
function isNamed(word: string): boolean {
  const name = word.replace(/\s*[[({<].*$/s, '');
  return guessQuantity(name === '' ? word : name) !== 'unknown';
}

function bare(fields: readonly string[]): readonly string[] {
  return fields.map((field) =>
    field
      .trim()
      .replace(/^"(.*)"$/s, '$1')
      .trim(),
  );
}
