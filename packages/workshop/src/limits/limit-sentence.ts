import { strongestFoot } from '@standstill/braking';
import type { UnitSystem } from '@standstill/units';
import { forceThereWords } from '../predict/warnings/pedal-warnings.ts';
import type { SetUpLimits } from '../results/limits-report.ts';
import type { SetUpPrediction } from '../results/prediction.ts';
import { percent } from '../words/percent.ts';
import { speaker } from '../words/speaker.ts';
import type { Speaker } from '../words/speaker.ts';
import { fades } from './limit-of.ts';

interface LimitSentenceInput {
  readonly setUp: SetUpPrediction;
  readonly limit: SetUpLimits['limit'];
  readonly lastOverFirst: number | null;
  readonly tiresLimitShare: number;
  /** m/s. */
  readonly speed: number;
  /** N. */
  readonly pedalForce: number;
  readonly units: UnitSystem;
}

/** What holds one set-up back and where it stops, in one sentence that a person can repeat. */
export function limitSentence(input: LimitSentenceInput): string {
  const { setUp, limit, speed, units } = input;
  const say = speaker(units);
  const range = say.range(setUp.distance_m.low, setUp.distance_m.high, 'stopping-distance');
  const stop = setUp.pedalBottoms ? '' : `; it stops from ${say.plain(speed, 'speed')} in ${range}`;
  return `${setUp.title}: ${holds[limit](input, say)}${stop}.`;
}

/** What else is to be known of the limit: the pedal force that reaches the tires, and what heat adds; '' where nothing is. */
export function limitDetails(input: LimitSentenceInput): string {
  return `${tiresFrom(input, speaker(input.units))}${heat(input)}`.trim();
}

const holds: Readonly<Record<SetUpLimits['limit'], (input: LimitSentenceInput, say: Speaker) => string>> = {
  'tire grip': ({ tiresLimitShare }) =>
    `tire grip holds the car back${sureness(tiresLimitShare)}: more grip shortens this stop, more brake does not`,
  balance: ({ setUp }) =>
    setUp.balance.firstToLock === 'rear'
      ? 'the balance holds the car back: the rear wheels are the first at their limit'
      : `the balance holds the car back: the ${setUp.balance.firstToLock} wheels are at their limit while the others have grip left`,
  heat: ({ tiresLimitShare }) =>
    `heat holds the car back: hot pads make the brakes too weak for the grip of the tires${sureness(1 - tiresLimitShare)}`,
  'pedal effort': ({ tiresLimitShare, pedalForce }, say) =>
    `pedal effort holds the car back${sureness(1 - tiresLimitShare)}: a foot of ${say.plain(pedalForce, 'force')} does not reach the tires' limit, a harder push does`,
  'brake torque': ({ tiresLimitShare }, say) =>
    `brake torque holds the car back${sureness(1 - tiresLimitShare)}: not even ${say.plain(strongestFoot, 'force')} on the pedal reaches the tires' limit`,
  'pedal travel': ({ setUp }, say) =>
    `pedal travel holds the car back: the pedal reaches the floor at ${forceThereWords(setUp.pedalForceThere_N, say)}`,
};

/** Nothing where it is as good as sure. */
function sureness(share: number): string {
  return share >= 0.975 ? '' : ` (in ${percent(share)} of the draws)`;
}

/** The pedal force at which the tires become the limit. */
function tiresFrom({ setUp, pedalForce }: LimitSentenceInput, say: Speaker): string {
  const force = setUp.pedalForceAtLimit_N;
  if (force === null) return '';
  const beyond = setUp.limitBeyondFootShare > 0.025 ? ', or is out of reach' : '';
  const asked = `the stop is asked at ${say.plain(pedalForce, 'force')}`;
  return ` The tires become the limit at ${say.range(force.low, force.high, 'force')} on the pedal${beyond}; ${asked}.`;
}

function heat({ lastOverFirst, setUp }: LimitSentenceInput): string {
  if (lastOverFirst === null || !fades(lastOverFirst)) return '';
  return ` In a row of ${setUp.repeatedStops.length} stops heat adds to that: the last one is ${percent(lastOverFirst - 1)} longer than the first.`;
}
