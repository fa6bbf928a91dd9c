import { numberField } from '../csv/number-field.ts';
import { clockSeconds } from '../time/clock-seconds.ts';
import { idOf, type FrameLine } from './frame.ts';
import { hexBytes } from './hex-bytes.ts';

/** As logged, without blanks at the ends. No two neighbors of the pattern match the same signs, so that it takes linear time. */
const short =
  /^\(([^()]+)\)\s+\S+\s+([0-9A-Fa-f]{3}|[0-9A-Fa-f]{8})(##[0-9A-Fa-f]?|#)((?:[0-9A-Fa-f]{2}(?:\.?[0-9A-Fa-f]{2})*)?|[Rr]\d?)(?:_[0-9A-Fa-f])?(?:\s+[RT])?$/;
/** As shown. */
const wide =
  /^(?:\(([^()]+)\)\s+)?\S+\s+(?:[RT]X(?:\s+[-A-Z]){2}\s+)?([0-9A-Fa-f]{3}|[0-9A-Fa-f]{8})\s+\[(\d{1,2})\]((?:\s+[0-9A-Fa-f]{2})*|\s+remote request)(?:\s*'.*'|\s+ERRORFRAME)?$/;

/** Bytes of a classic frame at most, and of a flexible one. */
const longest = { classic: 8, flexible: 64 };

const other = { kind: 'other' } as const;
const broken = { kind: 'broken' } as const;

/**
 * Reads a line of candump: as it logs (`(1436509052.249713) can0 0B0#0011`) or as it shows (`can0  0B0   [2]  00 11`,
 * with a time before it where it was asked for one). Times are seconds or date and time.
 *
 * @param text - the line
 * @returns the frame, or what the line is else
 */
export function candumpLine(text: string): FrameLine {
  const line = text.trim();
  const parts = short.exec(line);
  if (parts !== null) return shortFrame(parts[1]!, parts[2]!, parts[3]!, parts[4]!);
  const shown = wide.exec(line);
  if (shown === null) return broken;
  const id = idOf(shown[2]!);
  const payload = shown[4]!;
  if (Number.isNaN(id) || payload.endsWith('request')) return other;
  const data = hexBytes(payload);
  const length = Number(shown[3]);
  if (data === null || data.length !== length || length > longest.flexible) return broken;
  if (shown[1] === undefined) return { kind: 'no-time', id };
  const clock = candumpClock(shown[1]);
  return Number.isNaN(clock) ? broken : { id, clock, data, isFlexible: length > longest.classic };
}

function shortFrame(time: string, idDigits: string, mark: string, payload: string): FrameLine {
  const id = idOf(idDigits);
  if (Number.isNaN(id) || /^[Rr]/.test(payload)) return other;
  if (mark === '##') return broken;
  const isFlexible = mark.length === 3;
  const data = hexBytes(payload);
  const clock = candumpClock(time);
  if (data === null || Number.isNaN(clock)) return broken;
  if (data.length > (isFlexible ? longest.flexible : longest.classic)) return broken;
  return { id, clock, data, isFlexible };
}

function candumpClock(field: string): number {
  const text = field.trim();
  const seconds = numberField(text, false);
  return Number.isNaN(seconds) ? clockSeconds(text, 'date-time') : seconds;
}
