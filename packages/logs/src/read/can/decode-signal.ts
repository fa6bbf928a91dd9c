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

/** A negative number is counted from its complement, and halves of long ones apart, so that each is rounded once. */
function integerOf(bits: Uint16Array, data: Uint8Array, isSigned: boolean): number {
  const flip = isSigned ? bitAt(bits[0]!, data) : 0;
  const middle = Math.max(0, bits.length - 32);
  let high = 0;
  for (let i = 0; i < middle; i += 1) high = high * 2 + (bitAt(bits[i]!, data) ^ flip);
  let low = 0;
  for (let i = middle; i < bits.length; i += 1) low = low * 2 + (bitAt(bits[i]!, data) ^ flip);
  const raw = high * 2 ** 32 + (flip === 1 ? low + 1 : low);
  return flip === 1 ? -raw : raw;
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
