import type { SignalDescription } from './signal-description.ts';

const shape =
  /^SG_\s+(\w+)\s*(M|m\d+M?)?\s*:\s*(\d+)\s*\|\s*(\d+)\s*@\s*([01])\s*([+-])\s*\(\s*([^,()\s]+)\s*,\s*([^,()\s]+)\s*\)\s*(?:\[\s*([^|[\]\s]*)\s*\|\s*([^|[\]\s]*)\s*\])?\s*(?:"([^"]*)")?/;
const number = /^[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d+)?$/;

/** What a line of a DBC says of a signal; `multiplexedBy` is the value of the frame's switch with which it is there. */
export interface SignalLine extends Omit<SignalDescription, 'presence'> {
  readonly multiplexedBy: number | null;
}

/**
 * Reads one signal of a DBC.
 *
 * @param text - from `SG_` on
 * @returns the signal; null where the line breaks the format
 */
export function signalLine(text: string): SignalLine | null {
  const parts = shape.exec(text);
  if (parts === null) return null;
  const [, name = '', mark = '', start = '', length = '', order = '', sign = ''] = parts;
  const numbers = [parts[7]!, parts[8]!, parts[9] || '0', parts[10] || '0'];
  const size = Number(length);
  if (!numbers.every((field) => number.test(field)) || size < 1 || size > 64 || Number(start) > 511)
    return null;
  const [factor, offset, least, greatest] = numbers.map(Number) as [number, number, number, number];
  if (!numbers.map(Number).every(Number.isFinite) || factor === 0) return null;
  return {
    name,
    bits: order === '1' ? littleEndian(Number(start), size) : bigEndian(Number(start), size),
    coding: sign === '-' ? 'signed' : 'unsigned',
    factor,
    offset,
    range: least < greatest ? { least, greatest } : null,
    unit: (parts[11] ?? '').trim(),
    isSwitch: mark.endsWith('M'),
    multiplexedBy: mark.startsWith('m') ? parseInt(mark.slice(1), 10) : null,
  };
}

/** The start is the least significant bit; bits count upward through the bytes. */
function littleEndian(start: number, length: number): Uint16Array {
  return Uint16Array.from({ length }, (_, index) => start + length - 1 - index);
}

/** The start is the most significant bit; bits go down in a byte, then on to the top of the next. */
function bigEndian(start: number, length: number): Uint16Array {
  const bits = new Uint16Array(length);
  let at = start;
  for (let i = 0; i < length; i += 1) {
    bits[i] = at;
    at = at % 8 === 0 ? at + 15 : at - 1;
  }
  return bits;
}
