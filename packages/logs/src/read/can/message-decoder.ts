import type { MessageDescription, SignalDescription } from './dbc/signal-description.ts';
import { decodeSignal } from './decode-signal.ts';

/**
 * Makes the function that takes the signals out of the frames of one message.
 *
 * @param message - its description
 * @returns gives the numbers of a frame in the order of the signals, NaN where a multiplexed one is not in it; the array is used again
 */
export function messageDecoder({ signals }: MessageDescription): (data: Uint8Array) => Float64Array {
  const values = new Float64Array(signals.length).fill(NaN);
  const order = inOrderOfSwitches(signals);
  const places = new Map(signals.map(({ name }, index) => [name, index]));
  const switchOf = signals.map(({ presence }) => places.get(presence?.by ?? '') ?? -1);
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

/** A switch before what depends on it. Signals of a switch that is not there are in no order and never decoded. */
function inOrderOfSwitches(signals: readonly SignalDescription[]): readonly number[] {
  const order: number[] = [];
  const known = new Set<string>();
  for (let before = -1; before < order.length;) {
    before = order.length;
    signals.forEach(({ name, presence }, index) => {
      if (known.has(name) || (presence !== null && !known.has(presence.by))) return;
      known.add(name);
      order.push(index);
    });
  }
  return order;
}
