import { trapezoid } from '@standstill/numerics';
import { clockAt } from './clock-at.ts';
import { correctedDistance } from './corrected-distance.ts';
import { developedMean } from './developed-mean.ts';
import { downwardCrossing } from './downward-crossing.ts';
import type { FoundStop } from './found-stop.ts';
import { fullyDevelopedDeceleration } from './fully-developed-deceleration.ts';
import { headingAt } from './heading-at.ts';
import { peakDeceleration } from './peak-deceleration.ts';
import { printerIn } from './printer.ts';
import type { RestMoment } from './rest-moment.ts';
import type { StopContext } from './stop-context.ts';
import { stopFlags } from './stop-flags.ts';
import type { StopMotion } from './stop-motion.ts';
import { temperaturesAt } from './temperatures-at.ts';

/**
 * All figures of a stop from its motion, and the judgement on it.
 *
 * @param context - the log and what a person said
 * @param stop - the motion, m and s, its end and its number in the log
 * @returns the stop
 */
export function stopFigures(
  context: StopContext,
  {
    motion,
    rest,
    number,
  }: { readonly motion: StopMotion; readonly rest: RestMoment; readonly number: number },
): FoundStop {
  const { table, track, options } = context;
  const { start, end, entrySpeed, distance, chain } = motion;
  const { nominalSpeed, grade } = options;
  const gate = nominalSpeed === null ? null : downwardCrossing(chain, nominalSpeed);
  const figures = {
    number,
    startTime: start,
    endTime: end,
    clock: clockAt(table, start),
    startBy: motion.startBy,
    entrySpeed,
    applicationDistance: distance,
    distanceStandardError: motion.distanceError,
    startDelayError: motion.startDelayError,
    gateDistance: gate === null ? null : trapezoid(chain.time, chain.speed) - gate.distance,
    correctedDistance:
      nominalSpeed === null ? null : correctedDistance({ distance, entrySpeed, nominalSpeed, grade }),
    duration: end - start,
    meanDecelerationByDistance: (entrySpeed * entrySpeed) / (2 * distance),
    meanDecelerationByTime: entrySpeed / (end - start),
    meanFullyDevelopedDeceleration: fullyDevelopedDeceleration(chain, entrySpeed),
    peakDeceleration: peakDeceleration(chain),
    buildUpTime: motion.buildUpTime,
    sampleRate: 1 / track.interval,
    temperatures: temperaturesAt(table, start, end),
    developedPressure: developedMean(table, 'brake-pressure', chain),
    developedPedalForce: developedMean(table, 'pedal-force', chain),
    heading: headingAt(table, start),
    trace: motion.trace(),
  } satisfies Omit<FoundStop, 'flags'>;
  return {
    ...figures,
    flags: stopFlags(figures, { table, track, options, chain, rest, say: printerIn(options.units) }),
  };
}
