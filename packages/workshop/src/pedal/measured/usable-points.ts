import { assistLost, pedalReading } from '@standstill/braking';
import type { PedalReading, SetUp } from '@standstill/braking';
import type { JobPedalPoint, JobPedalTest } from '../../job/job.ts';
import { PedalPointsError } from './pedal-points-error.ts';

/** One measured push on a settled set-up. */
export interface UsablePoint {
  readonly point: JobPedalPoint;
  readonly reading: PedalReading;
  /** Corners plugged, 0 to 2. */
  readonly frontPlugged: number;
  readonly rearPlugged: number;
  /** False below push-out, where the pads still move in, and at the floor. */
  readonly used: boolean;
}

/** Share of the pedal's travel from which a push may be at the floor. */
const atTheFloor = 0.98;

/** The set-up in the state of the engine that a pedal was measured in. */
export function inStateOf(setUp: SetUp, engine: JobPedalTest['engine']): SetUp {
  return engine === 'off' ? assistLost(setUp) : setUp;
}

/**
 * The measured pushes with the pressures that a settled set-up gives them.
 *
 * @param setUp - in the state of the test
 * @param points - as measured
 * @returns the pushes, those that say something of air and compliance marked
 */
export function usablePoints(setUp: SetUp, points: readonly JobPedalPoint[]): readonly UsablePoint[] {
  const pushOut = Math.max(setUp.frontBrake.caliper.pushOutPressure, setUp.rearBrake.caliper.pushOutPressure);
  return points.map((point) => {
    const reading = readingOf(setUp, point);
    const isPressed = Math.min(reading.front, reading.rear) >= pushOut;
    const isFree = reading.travel < atTheFloor * setUp.pedal.availableTravel;
    const onAxle = (axle: string): number => point.plugged.filter((corner) => corner.startsWith(axle)).length;
    return {
      point,
      reading,
      frontPlugged: onAxle('front'),
      rearPlugged: onAxle('rear'),
      used: isPressed && isFree,
    };
  });
}

function readingOf(setUp: SetUp, { force, linePressure, travel }: JobPedalPoint): PedalReading {
  if (force !== null) return pedalReading(setUp, { travel: travel.value, pedalForce: force.value });
  if (linePressure !== null)
    return pedalReading(setUp, { travel: travel.value, frontPressure: linePressure.value });
  throw new TypeError('a measured push has neither force nor line pressure');
}

/** Ends where too few pushes are left. */
export function requireEnough(points: readonly UsablePoint[]): void {
  const open = points.filter(({ used, point }) => used && point.plugged.length === 0);
  if (open.length >= 4) return;
  const places = points.flatMap(({ used }, index) => (used ? [] : [String(index + 1)]));
  const left =
    places.length === 0
      ? ''
      : `: ${places.length === 1 ? 'point' : 'points'} ${places.join(', ')} ${places.length === 1 ? 'is' : 'are'} below the push-out pressure of the calipers or at the floor`;
  throw new PedalPointsError(
    `Measured pedal: ${open.length} usable ${open.length === 1 ? 'point' : 'points'} with nothing plugged${left}. Accepted are four or more, from light to hard, past the first touch of the pads and off the floor.`,
  );
}
