import type { ChannelTable } from '../channels/channel-table.ts';
import type { FoundStop } from './found-stop.ts';

/** The moment that a log's own brake signal gives for the first application. */
export interface BrakeStart {
  readonly by: Exclude<FoundStop['startBy'], 'deceleration-onset'>;
  /** s, halfway between the last sample without and the first with the brake applied. */
  readonly time: number;
  /** s, from the time between these samples. */
  readonly standardError: number;
}

/** In the order of trust. */
const signals = [
  ['brake-switch', 'brake-switch'],
  ['brake-pressure', 'brake-pressure'],
  ['pedal-force', 'pedal'],
  ['pedal-travel', 'pedal'],
] as const;

/** s, how long before and after the deceleration begins a brake signal may come on and still belong to it. */
const reach = { before: 2, after: 0.5 };
/** A level counts as applied above this share of its range in the whole log. Common practice. */
const appliedShare = 0.05;

/** A recorded brake signal and the level above which the brake counts as applied. */
export interface BrakeSignal {
  readonly by: BrakeStart['by'];
  readonly values: Float64Array;
  readonly threshold: number;
}

/**
 * The brake signals of a log, the most trusted first: switch, pressure, pedal.
 *
 * @param table - the log
 * @returns the signals; none where the log has none
 */
export function brakeSignals(table: ChannelTable): readonly BrakeSignal[] {
  return signals.flatMap(([quantity, by]) =>
    table.channels
      .filter((channel) => channel.quantity === quantity)
      .map(({ values }) => ({ by, values, threshold: appliedAbove(values) })),
  );
}

/**
 * Looks for the first application of the brake by a recorded signal: the last time that it comes on near the onset of
 * the deceleration.
 *
 * @param table - the log
 * @param brakes - its brake signals
 * @param onset - s, where the deceleration begins
 * @returns the moment; null where no signal came on near it
 */
export function brakeStart(
  table: ChannelTable,
  brakes: readonly BrakeSignal[],
  onset: number,
): BrakeStart | null {
  for (const signal of brakes) {
    const found = comingOn(table, signal, onset);
    if (found !== null) return { by: signal.by, ...found };
  }
  return null;
}

function comingOn(
  { time, segmentStarts }: ChannelTable,
  { values, threshold }: BrakeSignal,
  onset: number,
): { time: number; standardError: number } | null {
  let found: { time: number; standardError: number } | null = null;
  let last = -1;
  for (let row = firstRow(time, onset - reach.before); row < time.length; row += 1) {
    if (time[row]! > onset + reach.after) break;
    if (Number.isNaN(values[row])) continue;
    if (segmentStarts.includes(row)) last = -1;
    const isOn = values[row]! > threshold;
    if (isOn && last >= 0 && !(values[last]! > threshold)) {
      const gap = time[row]! - time[last]!;
      found = { time: time[row]! - gap / 2, standardError: gap / Math.sqrt(12) };
    } else if (!isOn) found = null;
    last = row;
  }
  return found;
}

function appliedAbove(values: Float64Array): number {
  let least = Infinity;
  let most = -Infinity;
  for (const value of values) {
    if (value < least) least = value;
    if (value > most) most = value;
  }
  return least + appliedShare * (most - least);
}

function firstRow(time: Float64Array, moment: number): number {
  let low = 0;
  let high = time.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time[middle]! < moment) low = middle + 1;
    else high = middle;
  }
  return Math.max(0, low - 1);
}
