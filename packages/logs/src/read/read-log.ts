import type { ByteSource } from '../channels/byte-source.ts';
import type { ChannelTable } from '../channels/channel-table.ts';
import { firstBytes } from './bytes/first-bytes.ts';
import { longestWhole, wholeBytes } from './bytes/whole-bytes.ts';
import { readCan } from './can/read-can.ts';
import type { ColumnChoices } from './csv/column-choice.ts';
import { readCsv } from './csv/read-csv.ts';
import { withDoubts } from './doubts/with-doubts.ts';
import { readGpx } from './gpx/read-gpx.ts';
import { readJsonLines } from './json/read-json-lines.ts';
import { refuseLog, type LogRefusal } from './log-refusal.ts';
import { readNmea } from './nmea/read-nmea.ts';
import { readRecords } from './records/read-records.ts';
import { sniffFormat, type LogFormat } from './sniff-format.ts';

export interface ReadOptions {
  /** What the file is called, for sentences. */
  readonly name: string;
  /** A person's word on columns or signals; it overrules every guess. */
  readonly columns?: ColumnChoices;
  /** Short for `columns.time.name`. */
  readonly timeColumn?: string;
  /** m/s for 1 in the speed column, where the file gives it no unit. */
  readonly speedScale?: number;
  /** The DBC file that describes the signals of a log of CAN frames: what it is called, and its text. */
  readonly signals?: { readonly name: string; readonly text: string };
}

export type ReadOutcome = { readonly ok: true; readonly table: ChannelTable } | LogRefusal;

type Reader = (bytes: Uint8Array, options: ReadOptions) => ReadOutcome;

/** Bytes that tell what a log is. */
const headLength = 1 << 20;

/** Readers of formats that are read at once; CSV is read piece by piece. */
const readers: Readonly<Record<Exclude<LogFormat, 'csv'>, Reader>> = {
  nmea: readNmea,
  gpx: readGpx,
  candump: (bytes, options) => readCan(bytes, options, 'candump'),
  trace: (bytes, options) => readCan(bytes, options, 'trace'),
  records: readRecords,
  json: readJsonLines,
};

/**
 * Reads a log into channels: what it is shows in its content, never in its name. What can't be read is refused in
 * one sentence that says what is missing and what to do.
 *
 * Assumes: CSV with one row a moment, NMEA 0183, GPX, CAN frames with a DBC file, named records or JSON objects, one a
 * line.
 *
 * @param source - the log, in memory or read piece by piece
 * @param options - name, a person's word on the columns, the DBC file of a CAN log
 * @returns the channel table with SI values (°C for temperatures), or the refusal
 */
export function readLog(source: Uint8Array | ByteSource, options: ReadOptions): ReadOutcome {
  const format = sniffFormat(firstBytes(source, headLength));
  if (format.kind === 'empty')
    return refuseLog('log-empty', options.name, 'is empty; export the log again and look at its size.');
  if (format.kind === 'refused')
    return refuseLog(
      'log-not-read',
      options.name,
      `looks like ${format.looksLike}; read are logs in CSV, NMEA 0183, GPX, candump with a DBC file, named records and JSON lines.`,
    );
  const read = format.kind === 'csv' ? readCsv(source, options) : readWhole(source, options, format.kind);
  return read.ok ? { ok: true, table: withDoubts(read.table) } : read;
}

function readWhole(
  source: Uint8Array | ByteSource,
  options: ReadOptions,
  format: Exclude<LogFormat, 'csv'>,
): ReadOutcome {
  const bytes = wholeBytes(source);
  if (bytes !== null) return readers[format](bytes, options);
  return refuseLog(
    'log-too-large',
    options.name,
    `is larger than ${longestWhole / 2 ** 20} MB, more than is read at once in its format; cut it into shorter logs.`,
  );
}
