import type { ByteSource } from '../../channels/byte-source.ts';
import { feedBytes } from '../bytes/feed-bytes.ts';
import { firstBytes } from '../bytes/first-bytes.ts';
import { sizeOf } from '../bytes/size-of.ts';
import type { ReadOptions, ReadOutcome } from '../read-log.ts';
import { byteRows } from './byte-rows.ts';
import { csvTable } from './csv-table.ts';
import { planCsv } from './plan-csv.ts';
import { RowStore } from './row-store.ts';
import { startsAtZero } from './time-reader.ts';

/** Bytes that are looked at before a file is read. */
const headLength = 1 << 20;

/**
 * Reads a CSV log: any delimiter, decimal sign, headings, row of units; in pieces, so that only the values are in
 * memory. What is skipped is counted with the first line that shows it.
 *
 * @param source - the file, in memory or read piece by piece
 * @param options - name and a person's word on the columns
 * @returns the channel table, or why the file can't be used
 */
export function readCsv(source: Uint8Array | ByteSource, options: ReadOptions): ReadOutcome {
  const size = sizeOf(source);
  const plan = planCsv(firstBytes(source, headLength), size, options);
  if (!plan.ok) return plan;
  const store = new RowStore({
    columns: plan.columns,
    issues: plan.issues,
    width: plan.dialect.width,
    zero: startsAtZero(plan.time) ? 0 : null,
    capacity: Math.ceil((1.02 * size) / plan.rowLength),
  });
  feedBytes(source, plan.fileEncoding, byteRows(plan, store));
  return csvTable(plan, store, size);
}
