import { textChunks } from '../bytes/text-chunks.ts';
import { csvRows, type CsvBatch } from './csv-rows.ts';
import type { PlannedTable } from './csv-table.ts';
import { numberField } from './number-field.ts';
import type { RowSink } from './row-sink.ts';
import { switchField } from './switch-field.ts';
import { timeReader } from './time-reader.ts';

/**
 * Reads the rows of a table through papaparse, which minds quotes.
 *
 * @param table - the file and what its columns are
 * @param sink - where the rows go
 */
export function fillByLibrary(table: PlannedTable, sink: RowSink): void {
  const { dialect, columns } = table;
  const { width, decimalComma } = dialect;
  const secondsOf = timeReader(table.time, decimalComma);
  let before = dialect.rowsBeforeData;
  for (const batch of csvRows(textChunks(table.bytes, table.encoding), dialect)) {
    reportDamage(batch, table);
    batch.rows.forEach((row, index) => {
      if (before > 0) {
        before -= 1;
        return;
      }
      const line = batch.lineOf(index);
      if (row.length !== width && !hasEmptyTail(row, width)) {
        if (!isBlank(row)) sink.raggedRow(line);
        return;
      }
      if (!sink.beginRow(secondsOf(fieldOf(row, table.time.index, width)), line)) return;
      columns.forEach((plan, column) => {
        const text = fieldOf(row, plan.index, width);
        const read = plan.role === 'brake-switch' ? switchField : numberField;
        const value = read(text, decimalComma);
        sink.value(column, value);
        if (Number.isNaN(value)) sink.noNumber(column, text, line);
      });
    });
  }
}

function reportDamage(batch: CsvBatch, { issues }: PlannedTable): void {
  if (batch.openQuote)
    issues.add(
      'open-quote',
      batch.lineOf(0),
      () => 'A quotation mark is never closed; the lines were split without minding it.',
    );
  if (batch.leftOut > 0)
    issues.add(
      'long-line',
      batch.lineOf(batch.rows.length),
      () => 'A line far too long for a log was skipped.',
    );
}

/** The last field of a row whose line ends in CR LF carries the CR. */
function fieldOf(row: readonly string[], index: number, width: number): string {
  const text = row[index]!;
  return index === width - 1 && text.endsWith('\r') ? text.slice(0, -1) : text;
}

/** A delimiter behind the last field makes one empty field more. */
function hasEmptyTail(row: readonly string[], width: number): boolean {
  return row.length === width + 1 && row[width]!.trim() === '';
}

function isBlank(row: readonly string[]): boolean {
  return row.every((text) => text.trim() === '');
}
