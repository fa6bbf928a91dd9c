import type { CsvPlan } from './csv-plan.ts';
import { otherHeadings } from './other-headings.ts';
import { numberField } from './number-field.ts';
import type { RowStore } from './row-store.ts';
import { switchField } from './switch-field.ts';
import type { ReadTime } from './time-reader.ts';

/**
 * Takes rows of fields into a store: what is too short or too long is skipped, never filled up or cut.
 *
 * @param plan - what the columns are
 * @param secondsOf - reads the time column
 * @param store - where the rows go
 * @returns takes one row and its line in the file
 */
export function rowTaker(
  { dialect, time, columns }: CsvPlan,
  secondsOf: ReadTime,
  store: RowStore,
): (fields: readonly string[], line: number) => void {
  const { width, decimalComma } = dialect;
  const dateIndex = time.kind === 'clock' ? time.dateIndex : -1;
  const areOther = otherHeadings(dialect);
  return (fields, line) => {
    if (fields.length !== width && !hasEmptyTail(fields, width)) {
      if (!fields.every(isBlank)) store.raggedRow(line);
      return;
    }
    const seconds = secondsOf(fields[time.index]!, fields[dateIndex] ?? '');
    if (Number.isNaN(seconds) && areOther(fields)) store.stopAt(fields.join(' | '), line);
    const row = store.begin(seconds, line);
    if (row < 0) return;
    for (let column = 0; column < columns.length; column += 1) {
      const { index, role } = columns[column]!;
      const text = fields[index]!;
      const value =
        role === 'brake-switch' ? switchField(text, decimalComma) : numberField(text, decimalComma);
      store.columns[column]![row] = value;
      if (Number.isNaN(value)) store.noNumber(column, text, line);
    }
  };
}

/** A delimiter behind the last field makes one empty field more. */
function hasEmptyTail(fields: readonly string[], width: number): boolean {
  return fields.length === width + 1 && isBlank(fields[width]!);
}

function isBlank(text: string): boolean {
  return text.trim() === '';
}
