import type { Channel, ChannelTable } from '../channels/channel-table.ts';
import type { SensorNoise } from '../stops/find-options.ts';
import type { UsedSensor } from '../stops/found-stop.ts';
import type { SpeedTrack } from '../stops/speed-run.ts';
import type { ForwardAcceleration, UselessAcceleration } from './forward-acceleration.ts';
import type { ScaledWheels } from './wheel-scale.ts';

const gravity = 9.80665;

interface Judged {
  readonly table: ChannelTable;
  readonly track: SpeedTrack;
  readonly speedNoise: number;
  readonly judged: readonly (ForwardAcceleration | UselessAcceleration)[];
  readonly acceleration: ForwardAcceleration | null;
  readonly position: { readonly noise: number } | null;
  readonly wheels: ScaledWheels | null;
  readonly given: SensorNoise;
}

const plain = { noise: null, noiseOrigin: null, bias: null, tilt: null, scale: null } as const;

/**
 * Says of every sensor of the motion and the brake in a log whether it was used, what was found out about it, and if
 * not, why.
 *
 * @param found - the log with what was judged of its sensors
 * @returns one line for a channel, in the order of the log
 */
export function usedSensors(found: Judged): readonly UsedSensor[] {
  return found.table.channels.flatMap((channel) => {
    const said = lineOf(channel, found);
    return said === null ? [] : [{ channel: channel.name, quantity: channel.quantity, ...plain, ...said }];
  });
}

type Line = Pick<UsedSensor, 'used' | 'note'> & Partial<UsedSensor>;

function lineOf(channel: Channel, found: Judged): Line | null {
  switch (channel.quantity) {
    case 'speed':
      return speedLine(channel, found);
    case 'wheel-speed':
      return wheelLine(channel, found);
    case 'acceleration-forward':
      return accelerationLine(channel, found);
    case 'latitude':
    case 'longitude':
      return positionLine(found);
    case 'brake-switch':
    case 'brake-pressure':
    case 'pedal-force':
    case 'pedal-travel':
      return { used: true, note: 'Tells when the brake was applied.' };
    default:
      return null;
  }
}

function speedLine(channel: Channel, { track, speedNoise, given }: Judged): Line {
  if (channel.name !== track.channel.name)
    return { used: false, note: `'${track.channel.name}' has more new readings and is used.` };
  return {
    used: true,
    note: `A new reading every ${track.interval.toFixed(2)} s.`,
    noise: speedNoise,
    noiseOrigin: given.speed === undefined ? 'estimated' : 'given',
  };
}

function wheelLine(channel: Channel, { track, wheels, speedNoise }: Judged): Line {
  if (track.channel.quantity === 'wheel-speed')
    return {
      used: true,
      note: 'The only speed there is; under braking a wheel slips and reads a little low.',
      noise: speedNoise,
      noiseOrigin: 'estimated',
    };
  if (wheels === null)
    return {
      used: false,
      note: `It does not go with '${track.channel.name}' by one scale while the car rolls.`,
    };
  const named = wheels.channel.name === channel.name ? '' : ' with the other wheels';
  return {
    used: true,
    note: `Used${named} until the brake is applied, scaled to '${track.channel.name}'; under braking wheels slip.`,
    noise: wheels.noise,
    noiseOrigin: 'estimated',
    scale: wheels.scale,
  };
}

function accelerationLine(channel: Channel, { judged, acceleration }: Judged): Line {
  const own = judged.find((one) => one.channel === channel);
  if (own !== undefined && 'reason' in own) return { used: false, note: own.reason };
  if (acceleration === null || acceleration.channel !== channel)
    return { used: false, note: `'${acceleration?.channel.name ?? ''}' is used.` };
  const from = acceleration.isFromRest ? 'at standstill' : 'against the speed, as the log has no standstill';
  const turned = acceleration.isTurned ? ' Its sign is turned.' : '';
  return {
    used: true,
    note: `Tilt and bias taken ${from}; the pitch of the body under braking is allowed for.${turned}`,
    noise: acceleration.noise,
    noiseOrigin: acceleration.noiseOrigin,
    bias: acceleration.bias,
    tilt: Math.asin(Math.max(-1, Math.min(1, acceleration.bias / gravity))),
  };
}

function positionLine({ position, acceleration, given }: Judged): Line | null {
  if (position === null) return { used: false, note: 'Latitude and longitude are needed together.' };
  if (acceleration === null)
    return { used: false, note: 'Without an accelerometer it adds nothing to the speed within one stop.' };
  return {
    used: true,
    note: 'Laid onto the straight line of each stop.',
    noise: position.noise,
    noiseOrigin: given.position === undefined ? 'assumed' : 'given',
  };
}
