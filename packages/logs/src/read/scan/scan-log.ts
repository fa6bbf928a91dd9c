import type { ByteSource } from '../../channels/byte-source.ts';
import { valueRange } from '../../channels/value-range.ts';
import type { FindOptions } from '../../stops/find-options.ts';
import { searchStops } from '../../stops/find-stops.ts';
import type { LogRefusal } from '../log-refusal.ts';
import { readLog, type ReadOptions } from '../read-log.ts';
import type { LogScan } from './log-scan.ts';

/**
 * Reads a log of any size and finds its stops, keeping what is told of a log and not its values.
 *
 * @param source - the log, in memory or read piece by piece
 * @param options - its name and a person's word on columns and stops
 * @returns what the log holds, with its stops; or why it can't be used
 * @throws OutOfRangeError where an option can't be
 */
export function scanLog(
  source: Uint8Array | ByteSource,
  options: ReadOptions & FindOptions,
): LogScan | LogRefusal {
  const read = readLog(source, options);
  if (!read.ok) return read;
  const { time, channels, headings, epoch, source: origin, issues } = read.table;
  return {
    ok: true,
    channels: channels.map(({ values, ...summary }) => ({ ...summary, range: valueRange(values) })),
    headings,
    epoch,
    duration: (time.at(-1) ?? 0) - (time[0] ?? 0),
    source: origin,
    issues,
    ...searchStops(read.table, options),
  };
}
