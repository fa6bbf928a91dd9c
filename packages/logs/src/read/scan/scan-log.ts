import type { ByteSource } from '../../channels/byte-source.ts';
import { valueRange } from '../../channels/value-range.ts';
import type { FindOptions } from '../../stops/find-options.ts';
import { searchStops } from '../../stops/find-stops.ts';
import { firstBytes } from '../bytes/first-bytes.ts';
import { sizeOf } from '../bytes/size-of.ts';
import type { LogRefusal } from '../log-refusal.ts';
import { readLog, type ReadOptions } from '../read-log.ts';
import { sniffFormat } from '../sniff-format.ts';
import type { LogScan } from './log-scan.ts';
import { scanSections } from './scan-sections.ts';

/** Bytes; a smaller log is read at once, a larger one in sections where its format can be. */
const smallLog = 64 * 2 ** 20;
/** Bytes that tell what a log is. */
const headLength = 1 << 20;

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
  if (sizeOf(source) > smallLog && sniffFormat(firstBytes(source, headLength)).kind === 'csv')
    return scanSections(source, options);
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
