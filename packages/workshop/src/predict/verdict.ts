import type { UnitSystem } from '@standstill/units';
import type { SetUpDifference, SetUpPrediction } from '../results/prediction.ts';
import { changeOf } from '../words/change.ts';
import { listOf } from '../words/list-of.ts';
import { signedRange } from '../words/signed-range.ts';
import { speaker } from '../words/speaker.ts';
import type { Speaker } from '../words/speaker.ts';
import { subjectOf } from '../words/subject-of.ts';
import { distanceWords } from './distance-words.ts';
import { heatWords } from './heat-words.ts';
import { trifles } from './trifles.ts';

export interface VerdictInput {
  readonly reference: SetUpPrediction;
  readonly changed: SetUpPrediction;
  readonly difference: Omit<SetUpDifference, 'verdict'>;
  /** True where the tires stay the same. */
  readonly sameTires: boolean;
  /** Where a rear-first lock is found with the central values. */
  readonly rearLocksFirst: boolean;
  /** m/s. */
  readonly speed: number;
  /** N. */
  readonly pedalForce: number;
  readonly units: UnitSystem;
}

/** What a set-up buys, what it does not, and what it makes worse: the trade's plain words, no more than the interval. */
export function verdict(input: VerdictInput): string {
  const say = speaker(input.units);
  const sentences = [
    input.rearLocksFirst ? 'DANGER: the rear wheels lock first; do not drive it like this.' : '',
    `${subjectOf(input.changed.title, input.sameTires).name} ${distanceWords(input, say)}.`,
    limitWords(input, say),
    balanceWords(input),
    effortWords(input, say),
    travelWords(input, say),
    heatWords(input, say),
    idlePartWords(input),
  ];
  return sentences.filter((sentence) => sentence !== '').join(' ');
}

function limitWords({ reference, changed, pedalForce }: VerdictInput, say: Speaker): string {
  const at = `at ${say.plain(pedalForce, 'force')}`;
  const before = reference.limitedBy !== 'brake torque';
  const after = changed.limitedBy !== 'brake torque';
  if (before && after)
    return `Before and after the tires are the limit ${at}: more brake can't shorten this stop, only grip or a better balance can.`;
  if (after) return `Before, the brakes are the limit ${at}; with it the tires are.`;
  if (before) return `With it the brakes no longer reach the tires' limit ${at}: that takes a harder push.`;
  return `Before and after the brakes are the limit ${at}: the tires have grip left for a harder push.`;
}

/** g by which the first lock must move to be worth a sentence (assumed). */
const worthSaying = 0.03;

/** A first lock that comes earlier is what a badly matched kit costs. */
function balanceWords({ reference, changed }: VerdictInput): string {
  const [before, after] = [reference.balance, changed.balance];
  if (before.lockDeceleration_g === null || after.lockDeceleration_g === null) return '';
  const [z0, z1] = [before.lockDeceleration_g.value, after.lockDeceleration_g.value];
  const sameAxle = before.firstToLock === after.firstToLock;
  if (sameAxle && Math.abs(z1 - z0) < worthSaying) return '';
  const was = sameAxle ? `${z0.toFixed(2)} g` : `the ${before.firstToLock} ones at ${z0.toFixed(2)} g`;
  const matched = z1 < z0 - worthSaying ? ': front and rear match less well than before' : '';
  return `It moves the balance: the ${after.firstToLock} wheels are the first at their limit, at ${z1.toFixed(2)} g instead of ${was}${matched}.`;
}

function effortWords({ difference }: VerdictInput, say: Speaker): string {
  if (difference.pedalForceAtLimit_N === null) return '';
  const change = changeOf(difference.pedalForceAtLimit_N, trifles.force);
  if (change.kind !== 'less' && change.kind !== 'more') return '';
  return `The tires' limit takes ${say.range(change.least, change.most, 'force')} ${change.kind} on the pedal.`;
}

function travelWords({ difference }: VerdictInput, say: Speaker): string {
  const change = changeOf(difference.pedalTravel_m, trifles.travel);
  const range = signedRange(difference.pedalTravel_m, 'travel', say);
  if (change.kind === 'none') return 'The pedal travel stays what it is.';
  if (change.kind === 'less' || change.kind === 'more') return `The pedal gets ${range}.`;
  return `No sure change of pedal travel (${range}).`;
}

/** Parts that change nothing are named: money that stays in the customer's pocket. */
function idlePartWords({ difference }: VerdictInput): string {
  const { byPart } = difference;
  const idle = byPart.filter(({ distance_m }) => Math.abs(distance_m) < trifles.partDistance);
  if (idle.length === 0 || byPart.length < 2) return '';
  if (idle.length === byPart.length) return 'None of its parts changes the distance of one stop.';
  const titles = listOf(idle.map(({ title }) => title));
  return `Of its parts these change nothing in the distance of one stop: ${titles}.`;
}
