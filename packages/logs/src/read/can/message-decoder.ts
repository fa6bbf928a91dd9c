import type { MessageDescription, SignalDescription } from './dbc/signal-description.ts';
import { decodeSignal } from './decode-signal.ts';

/**
 * Makes the function that takes the signals out of the frames of one message.
 *
 * @param message - its description
 * @returns gives the numbers of a frame in the order of the signals, NaN where a multiplexed one is not in it; the array is used again
 */
export function messageDecoder({ signals }: MessageDescription): (data: Uint8Array) => Float64Array {
  const values = new Float64Array(signals.length);
  const order = inOrderOfSwitches(signals);
  const switchOf = signals.map(({ presence }) => signals.findIndex(({ name }) => name === presence?.by));
  const raw = new Float64Array(signals.length);
  return (data) => {
    for (const index of order) {
      const signal = signals[index]!;
      const isThere = signal.presence === null || isPresent(signal, raw[switchOf[index]!]!);
      const value = isThere ? decodeSignal(signal, data) : NaN;
      values[index] = value;
      raw[index] = (value - signal.offset) / signal.factor;
    }
    return values;
  };
}

function isPresent({ presence }: SignalDescription, value: number): boolean {
  return presence!.values.some(({ from, to }) => value > from - 0.5 && value < to + 0.5);
}

/** A switch before what depends on it. A circle of switches leaves its signals last, where none of them is ever there. */
function inOrderOfSwitches(signals: readonly SignalDescription[]): readonly number[] {
  const order: number[] = [];
  const known = new Set<string>();
  for (let round = 0; round <= signals.length; round += 1)
    signals.forEach(({ name, presence }, index) => {
      if (known.has(name) || (presence !== null && !known.has(presence.by))) return;
      known.add(name);
      order.push(index);
    });
  return order;
}
