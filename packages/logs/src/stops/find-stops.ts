import type { ChannelTable } from '../channels/channel-table.ts';
import { logSensors } from '../smooth/log-sensors.ts';
import { brakeSignals } from './brake-start.ts';
import { fillOptions } from './fill-options.ts';
import type { FindOptions } from './find-options.ts';
import type { FoundStop, UsedSensor } from './found-stop.ts';
import { measureStop } from './measure-stop.ts';
import type { RejectedStop } from './rejected-stop.ts';
import { restMoments } from './rest-moment.ts';
import { speedTrack } from './speed-track.ts';

/** What a log holds of stops, and of what looked like one. */
export interface StopSearch {
  readonly stops: readonly FoundStop[];
  readonly rejected: readonly RejectedStop[];
  /** The sensors of the log, and what the smoother made of each. */
  readonly sensors: readonly UsedSensor[];
}

/**
 * Finds every stop of a log.
 *
 * The rule: the end is where the speed falls to 0.5 m/s, carried on to rest. From there back, braking lasts as long as
 * the mean deceleration over the following second stays at 0.5 m/s² or more. Within that second the start is the
 * recorded brake signal where there is one, else the onset of deceleration by back-extrapolation (`estimateOnset`). A
 * traffic stop (`gentleBelow`) shows no step to extrapolate from, nor does a record with samples more than 1.5 s apart:
 * it starts at the last sample that was surely not braked
 * (`onsetAtSample`). Held values are reduced to their real updates first; nothing is computed across a gap of more than half a second
 * (three usual samples where that is longer), a void fix or a jump of the clock.
 *
 * @param table - the log
 * @param options - what a person said
 * @returns stops in the order of the log, and falls of the speed that are no stops, with the reason
 * @throws OutOfRangeError where an option can't be
 */
export function searchStops(table: ChannelTable, options: FindOptions = {}): StopSearch {
  const filled = fillOptions(options);
  const track = speedTrack(table, filled.speedChannel);
  if (track === null) return { stops: [], rejected: [], sensors: [] };
  const sensors = logSensors(table, track, filled);
  const brakes = filled.startBy === 'any' ? brakeSignals(table) : [];
  const stops: FoundStop[] = [];
  const rejected: RejectedStop[] = [];
  for (const run of track.runs) {
    for (const rest of restMoments(run, track.resolution)) {
      const found = measureStop(
        { table, track, run, brakes, sensors, options: filled },
        rest,
        stops.length + 1,
      );
      if (found === null) continue;
      if ('flags' in found) stops.push(found);
      else rejected.push(found);
    }
  }
  return { stops, rejected, sensors: sensors.used };
}

/**
 * Finds the stops of a log; `searchStops` also tells what was not counted as one.
 *
 * @param table - the log
 * @param options - what a person said
 * @returns stops in the order of the log
 * @throws OutOfRangeError where an option can't be
 */
export function findStops(table: ChannelTable, options: FindOptions = {}): readonly FoundStop[] {
  return searchStops(table, options).stops;
}
