import type { ByteSource } from '../channels/byte-source.ts';
import type { ChannelTable } from '../channels/channel-table.ts';
import { longestWhole, wholeBytes } from './bytes/whole-bytes.ts';
import type { ColumnChoices } from './csv/column-choice.ts';
import { readCsv } from './csv/read-csv.ts';
import { refuseLog, type LogRefusal } from './log-refusal.ts';
import { readNmea } from './nmea/read-nmea.ts';
import { sniffFormat } from './sniff-format.ts';

export interface ReadOptions {
  /** What the file is called, for sentences. */
  readonly name: string;
  /** A person's word on columns of a CSV file; it overrules every guess. */
  readonly columns?: ColumnChoices;
  /** Short for `columns.time.name`. */
  readonly timeColumn?: string;
  /** m/s for 1 in the speed column, where the file gives it no unit. */
  readonly speedScale?: number;
}

export type ReadOutcome = { readonly ok: true; readonly table: ChannelTable } | LogRefusal;

/**
 * Reads a log into channels: what it is shows in its content, never in its name. What can't be read is refused in
 * one sentence that says what is missing and what to do.
 *
 * Assumes: CSV with one row a moment, or NMEA 0183.
 *
 * @param source - the log, in memory or read piece by piece
 * @param options - name and a person's word on the columns
 * @returns the channel table with SI values (°C for temperatures), or the refusal
 */
export function readLog(source: Uint8Array | ByteSource, options: ReadOptions): ReadOutcome {
  const bytes = wholeBytes(source);
  if (bytes === null)
    return refuseLog(
      'log-too-large',
      options.name,
      `is larger than ${longestWhole / 2 ** 20} MB, more than is read at once; cut it into shorter logs.`,
    );
  const format = sniffFormat(bytes);
  if (format.kind === 'empty')
    return refuseLog('log-empty', options.name, 'is empty; export the log again and look at its size.');
  if (format.kind === 'refused')
    return refuseLog(
      'log-not-read',
      options.name,
      `looks like ${format.looksLike}; CSV and NMEA 0183 logs are read.`,
    );
  return format.kind === 'nmea' ? readNmea(bytes, options) : readCsv(bytes, options);
}
