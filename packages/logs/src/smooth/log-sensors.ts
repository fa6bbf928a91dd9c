import type { Channel, ChannelTable } from '../channels/channel-table.ts';
import type { FilledOptions } from '../stops/find-options.ts';
import type { UsedSensor } from '../stops/found-stop.ts';
import { medianWheelSpeed } from '../stops/median-wheel-speed.ts';
import type { SpeedTrack } from '../stops/speed-run.ts';
import {
  forwardAcceleration,
  type ForwardAcceleration,
  type UselessAcceleration,
} from './forward-acceleration.ts';
import { roughness } from './roughness.ts';
import { motionLayout } from './motion-step.ts';
import type { SmoothedStop } from './backward-pass.ts';
import { stopSmoother } from './stop-smoother.ts';
import type { StopSensors } from './stop-sensors.ts';
import { usedSensors } from './used-sensors.ts';
import { scaledWheels, type ScaledWheels } from './wheel-scale.ts';

/** The sensors of a log, judged once for all of its stops. */
export interface LogSensors {
  /** m/s, one standard deviation of what is new with every sample of the speed. */
  readonly speedNoise: number;
  readonly acceleration: ForwardAcceleration | null;
  readonly position: {
    readonly latitude: Channel;
    readonly longitude: Channel;
    readonly noise: number;
  } | null;
  readonly wheels: ScaledWheels | null;
  readonly smooth: (sensors: StopSensors) => SmoothedStop;
  readonly used: readonly UsedSensor[];
}

/** m/s; no receiver's speed is better. Common practice. */
const leastSpeedNoise = 0.01;
/** m, of a receiver's position within a stop; common practice, as a stop is too short to tell. */
const positionNoise = 0.5;

/**
 * Judges the sensors of a log: which of them tell something of the motion, how much each scatters and is off.
 *
 * @param table - the log
 * @param track - its speed
 * @param options - what a person said of their noise
 * @returns the sensors, and a smoother for them
 */
export function logSensors(table: ChannelTable, track: SpeedTrack, options: FilledOptions): LogSensors {
  const given = options.sensorNoise;
  const judged = table.channels
    .filter(({ quantity }) => quantity === 'acceleration-forward')
    .map((channel) => forwardAcceleration(table, track, channel, given.acceleration ?? null));
  const acceleration = judged.find(isUseful) ?? null;
  const speedNoise =
    given.speed ?? Math.max(leastSpeedNoise, track.resolution / Math.sqrt(12), noiseOf(track));
  const isWheel = track.channel.quantity === 'wheel-speed';
  const wheels = isWheel
    ? null
    : (medianWheelSpeed(table).map((channel) => scaledWheels(table, track, channel))[0] ?? null);
  const position = positionOf(table, given.position ?? positionNoise);
  return {
    speedNoise,
    acceleration,
    position,
    wheels,
    smooth: smootherFor(),
    used: usedSensors({ table, track, speedNoise, judged, acceleration, position, wheels, given }),
  };
}

/** One smoother for each set of sensors that a stop may have. */
function smootherFor(): (sensors: StopSensors) => SmoothedStop {
  const made = new Map<number, (sensors: StopSensors) => SmoothedStop>();
  return (sensors) => {
    const [hasAcceleration, hasPosition] = [sensors.acceleration !== null, sensors.position !== null];
    const key = (hasAcceleration ? 1 : 0) + (hasPosition ? 2 : 0);
    const smoother = made.get(key) ?? stopSmoother(motionLayout({ hasAcceleration, hasPosition }));
    made.set(key, smoother);
    return smoother(sensors);
  };
}

function isUseful(one: ForwardAcceleration | UselessAcceleration): one is ForwardAcceleration {
  return 'samples' in one;
}

function positionOf(table: ChannelTable, noise: number): LogSensors['position'] {
  const latitude = table.channels.find(({ quantity }) => quantity === 'latitude');
  const longitude = table.channels.find(({ quantity }) => quantity === 'longitude');
  return latitude === undefined || longitude === undefined ? null : { latitude, longitude, noise };
}

function noiseOf({ runs: [first, ...others] }: SpeedTrack): number {
  if (first === undefined) return 0;
  const longest = others.reduce((best, run) => (run.time.length > best.time.length ? run : best), first);
  return roughness(longest.speed, (value) => value > 1);
}
