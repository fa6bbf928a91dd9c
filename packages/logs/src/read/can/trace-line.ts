import { numberField } from '../csv/number-field.ts';
import { idOf, type FrameLine } from './frame.ts';
import { hexBytes } from './hex-bytes.ts';

/** With single blanks between the parts and none at the ends. */
const shape =
  /^\d+\) (\d+(?:\.\d+)?) (?:([A-Za-z]{2,5}) )?([0-9A-Fa-f]{4}|[0-9A-Fa-f]{8}) (\d)((?: [0-9A-Fa-f]{2})*| RTR)$/;
const status = /^\d+\) \d+(?:\.\d+)? (?:Warng|Error)\b/;

/**
 * Reads a line of a numbered trace, version 1.0 or 1.1: number, ms since the start, in 1.1 what it is, identifier, length,
 * bytes.
 *
 * @param line - the line
 * @returns the frame, or what the line is else
 */
export function traceLine(line: string): FrameLine {
  const text = line.trim().replace(/\s+/g, ' ');
  const parts = shape.exec(text);
  if (parts === null) return { kind: status.test(text) ? 'other' : 'broken' };
  const kind = parts[2]?.toLowerCase() ?? 'rx';
  const id = idOf(parts[3]!);
  if ((kind !== 'rx' && kind !== 'tx') || Number.isNaN(id) || parts[5]!.includes('RTR'))
    return { kind: 'other' };
  const data = hexBytes(parts[5]!);
  const clock = numberField(parts[1]!, false) / 1000;
  if (data === null || data.length !== Number(parts[4]) || Number.isNaN(clock)) return { kind: 'broken' };
  return { id, clock, data, isFlexible: false };
}
