import type { Job, JobPart } from '../../job/job.ts';
import type { Known } from '../../job/known.ts';
import { driverSharePath } from '../model/day-knowns.ts';

/** What acts on a stop, as a person of the trade names it. */
export interface Cause {
  readonly title: string;
  /** What to do so that it is known by itself; null where nothing in a workshop does. */
  readonly toKnow: string | null;
}

/** Every cause that numbers of a job are gathered under. */
export const causes = {
  grip: {
    title: "the tires' grip",
    toKnow:
      'record the wheel speeds of a stop in which a wheel just locks, on a closed course: it shows the whole grip',
  },
  antilock: {
    title: 'what ABS uses of the grip',
    toKnow: 'record the wheel speeds: they show how near to the peak the ABS keeps the wheels',
  },
  driver: {
    title: 'how near to locking the driver holds it',
    toKnow: 'record the wheel speeds, so that the log shows how near to locking the wheels were',
  },
  frontPads: {
    title: "the front pads' friction",
    toKnow: 'record the line pressure: deceleration per pressure is pads and radius, whatever the foot does',
  },
  rearPads: {
    title: "the rear pads' friction",
    toKnow: 'measure how much front and rear rotors warm in one stop: heat goes with brake force',
  },
  pads: {
    title: "the pads' friction",
    toKnow: 'record the line pressure: deceleration per pressure is pads and radius, whatever the foot does',
  },
  drum: { title: 'the drums', toKnow: 'record the pressure of both circuits' },
  radius: { title: 'the effective radius', toKnow: 'measure the rotors and the height of the pads' },
  calipers: { title: 'the calipers', toKnow: 'measure the pistons' },
  foot: { title: 'the force of the foot', toKnow: 'record the pedal force' },
  footSpeed: { title: 'how fast the foot comes down', toKnow: 'record the pedal force over time' },
  booster: { title: 'the booster', toKnow: 'record pedal force and line pressure together' },
  pedal: { title: 'pedal and master cylinder', toKnow: 'record pedal force and line pressure together' },
  valve: { title: 'the rear valve', toKnow: 'record the pressure before and behind it' },
  lines: { title: 'hoses, fluid and what stretches', toKnow: 'record the line pressure over time' },
  mass: { title: "the car's mass", toKnow: 'weigh the car as tested, axle by axle' },
  balance: { title: "where the car's weight sits", toKnow: 'weigh the car as tested, axle by axle' },
  heat: { title: "the rotors' temperature", toKnow: 'measure the rotors before each stop' },
  road: { title: 'slope, air and rolling', toKnow: 'drive as many stops in each direction' },
  rest: { title: 'everything else', toKnow: null },
} as const satisfies Readonly<Record<string, Cause>>;

export type CauseId = keyof typeof causes;

/**
 * Gathers numbers under what they are to a stop.
 *
 * @param job - the job
 * @param known - a number of it
 * @returns the cause
 */
export function causeOf(job: Job, { path }: Known): CauseId {
  if (path === driverSharePath) return 'driver';
  const field = path.slice(path.lastIndexOf('.') + 1);
  if (path.startsWith('conditions.')) return ofConditions[field] ?? 'road';
  if (path.startsWith('car.')) return ofCar[field] ?? 'road';
  const part = Object.values(job.parts).find(({ id }) => path.startsWith(`parts.${id}.`));
  return part === undefined ? ofSlot(path) : ofPart(job, part, path);
}

const ofConditions: Readonly<Record<string, CauseId>> = {
  surfaceFactor: 'grip',
  waterDepth: 'grip',
  pedalForce: 'foot',
  pedalRamp: 'footSpeed',
  startTemperature: 'heat',
};

const ofCar: Readonly<Record<string, CauseId>> = {
  mass: 'mass',
  centerOfGravityHeight: 'balance',
  frontLoadShare: 'balance',
  leftLoadShare: 'balance',
  wheelbase: 'balance',
};

function ofPart(job: Job, part: JobPart, path: string): CauseId {
  switch (part.kind) {
    case 'tire':
      return path.endsWith('.rollingRadius') ? 'radius' : 'grip';
    case 'antilock':
      return 'antilock';
    case 'pad':
      return ofPad(job, part.id, path);
    case 'rotor':
      return path.endsWith('Diameter') ? 'radius' : 'heat';
    case 'caliper':
      return /\.(?:volumeCompliance|runningClearance)$/.test(path) ? 'lines' : 'calipers';
    case 'booster':
      return 'booster';
    case 'pedal':
    case 'master-cylinder':
      return 'pedal';
    case 'rear-valve':
      return 'valve';
    case 'hose':
    case 'tube':
    case 'fluid':
      return 'lines';
    case 'drum':
      return 'drum';
    default:
      return 'rest';
  }
}

function ofPad({ setUps }: Job, id: string, path: string): CauseId {
  if (path.endsWith('.radialHeight')) return 'radius';
  if (path.endsWith('.compressibility')) return 'lines';
  if (!path.endsWith('.friction')) return 'heat';
  const isFront = setUps.some(({ slots }) => slots.frontPad === id);
  const isRear = setUps.some(({ slots }) => slots.rearPad === id);
  return isFront && isRear ? 'pads' : isFront ? 'frontPads' : 'rearPads';
}

/** A part that was assumed has the path of its slot. */
function ofSlot(path: string): CauseId {
  if (/\.(?:antilock)\./.test(path)) return 'antilock';
  if (/\.rearValve\./.test(path)) return 'valve';
  if (/\.(?:fluid|frontHose|rearHose|frontTube|rearTube)\./.test(path)) return 'lines';
  return 'rest';
}
