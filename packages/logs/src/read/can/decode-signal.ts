import type { SignalDescription } from './dbc/signal-description.ts';

const words = new Uint32Array(2);
const singles = new Float32Array(words.buffer);
const doubles = new Float64Array(words.buffer);
const lowFirst = new Uint8Array(Uint32Array.of(1).buffer)[0] === 1;

/**
 * The number that a signal stands for in a frame, in its described unit.
 *
 * Equation: value = raw × factor + offset
 *
 * @param signal - its description; all its bits are in the frame
 * @param data - bytes of the frame
 * @returns the number; NaN for a float that is none
 */
export function decodeSignal({ bits, coding, factor, offset }: SignalDescription, data: Uint8Array): number {
  const raw = coding === 'float' ? floatOf(bits, data) : integerOf(bits, data, coding === 'signed');
  const value = raw * factor + offset;
  return Number.isFinite(value) ? value : NaN;
}

/** A negative number is counted from its complement, so that one of 64 bits stays exact near zero. */
function integerOf(bits: Uint16Array, data: Uint8Array, isSigned: boolean): number {
  const isNegative = isSigned && bitAt(bits[0]!, data) === 1;
  let raw = 0;
  for (let i = 0; i < bits.length; i += 1) {
    const bit = bitAt(bits[i]!, data);
    raw = raw * 2 + (isNegative ? 1 - bit : bit);
  }
  return isNegative ? -raw - 1 : raw;
}

function floatOf(bits: Uint16Array, data: Uint8Array): number {
  if (bits.length === 32) {
    words[0] = integerOf(bits, data, false);
    return singles[0]!;
  }
  words[lowFirst ? 1 : 0] = integerOf(bits.subarray(0, 32), data, false);
  words[lowFirst ? 0 : 1] = integerOf(bits.subarray(32), data, false);
  return doubles[0]!;
}

function bitAt(position: number, data: Uint8Array): number {
  return (data[position >> 3]! >> (position & 7)) & 1;
}
