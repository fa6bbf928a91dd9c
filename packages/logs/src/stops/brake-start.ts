import type { ChannelTable } from '../channels/channel-table.ts';
import type { FoundStop } from './found-stop.ts';

/** The moment that a log's own brake signal gives for the first application. */
export interface BrakeStart {
  readonly by: Exclude<FoundStop['startBy'], 'deceleration-onset'>;
  /**
   * s, halfway between the last sample without and the first with the brake applied; where these lie far apart, where
   * between them it goes best with the onset of the deceleration.
   */
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
/** s; samples of a brake signal further apart leave its moment too open. */
const farApart = 0.15;
/** s, from the brake signal to the first deceleration: play of the pads, the fluid, the booster. Common practice. */
const deadTime = { value: 0.12, spread: 0.15 };
/** s; a signal that goes away for less than this bounced: no foot leaves a pedal and comes back so soon. Common practice. */
const chatter = 0.2;
/** A level counts as applied above this share of its range in the whole log. Common practice. */
const appliedShare = 0.05;

interface Moment {
  readonly time: number;
  readonly standardError: number;
}

/** s, where a deceleration begins, and one standard error. */
export type Onset = Moment;

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
 * Assumes: a signal that is away for up to 0.2 s bounced; where samples are more than 0.15 s apart, that the deceleration begins 0.12 ± 0.15 s after the signal.
 *
 * @param table - the log
 * @param brakes - its brake signals
 * @param onset - s, where the deceleration begins, with its standard error
 * @returns the moment; null where no signal came on near it
 * Source: [common-practice]
 */
export function brakeStart(
  table: ChannelTable,
  brakes: readonly BrakeSignal[],
  onset: Onset,
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
  onset: Onset,
): Moment | null {
  let found: Moment | null = null;
  let last = -1;
  let lastOn = -Infinity;
  for (let row = firstRow(time, onset.time - reach.before); row < time.length; row += 1) {
    if ((last < 0 ? time[row]! : time[last]!) > onset.time + reach.after) break;
    if (Number.isNaN(values[row])) continue;
    if (segmentStarts.includes(row)) [last, lastOn] = [-1, -Infinity];
    const isOn = values[row]! > threshold;
    const bounces = time[row]! - lastOn <= chatter;
    if (isOn && last >= 0 && !(values[last]! > threshold) && !bounces)
      found = between(time[last]!, time[row]!, onset);
    else if (!isOn && !bounces && time[row]! <= onset.time + reach.after) found = null;
    if (isOn) lastOn = time[row]!;
    last = row;
  }
  return found;
}

/** Somewhere between two samples; where they lie far apart, weighed by how it goes with the onset. */
function between(from: number, to: number, onset: Onset): Moment {
  const gap = to - from;
  if (gap <= farApart) return { time: to - gap / 2, standardError: gap / Math.sqrt(12) };
  const spread = Math.hypot(deadTime.spread, onset.standardError);
  let [weights, mean, square] = [0, 0, 0];
  for (let i = 0; i < 60; i += 1) {
    const at = from + (gap * (i + 0.5)) / 60;
    const weight = Math.exp(-(((onset.time - deadTime.value - at) / spread) ** 2) / 2) + 1e-12;
    weights += weight;
    mean += weight * (at - from);
    square += weight * (at - from) ** 2;
  }
  mean /= weights;
  return { time: from + mean, standardError: Math.sqrt(Math.max(0, square / weights - mean * mean)) };
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
