import type { UnitSystem } from '@standstill/units';
import type { SetUpDifference, SetUpPrediction } from '../results/prediction.ts';
import type { Warning } from '../results/warning.ts';
import { listOf } from '../words/list-of.ts';
import { signedRange } from '../words/signed-range.ts';
import { speaker } from '../words/speaker.ts';
import type { Speaker } from '../words/speaker.ts';
import { subjectOf } from '../words/subject-of.ts';
import { toldChange } from '../words/told-change.ts';
import { distanceWords, oneStop } from './distance-words.ts';
import { heatWords } from './heat-words.ts';
import { trifles } from './trifles.ts';

export interface VerdictInput {
  readonly reference: SetUpPrediction;
  readonly changed: SetUpPrediction;
  readonly difference: Omit<SetUpDifference, 'verdict'>;
  /** True where the tires stay the same. */
  readonly sameTires: boolean;
  /** Of the changed set-up. */
  readonly dangers: readonly Warning[];
  /** True where the reference has dangers of its own. */
  readonly referenceInDanger: boolean;
  readonly wet: boolean;
  /** °C, rotors at the start of the stop. */
  readonly startTemperature: number;
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
    dangerSentence(input),
    input.wet ? 'Grip on water differs from tire to tire by more than is known here: no saving is sure.' : '',
    ...distanceSentences(input, say),
    balanceWords(input),
    effortWords(input, say),
    travelWords(input, say),
    bottomedOf(input).length > 0 ? '' : heatWords(input, say),
    idlePartWords(input, say),
    fluidWords(input, say),
  ];
  return sentences.filter((sentence) => sentence !== '').join(' ');
}

const dangerNames: Readonly<Record<string, (setUp: SetUpPrediction) => string>> = {
  'rear-locks-first': () => 'the rear wheels lock first',
  'rear-locks-first-hot': ({ balance }) =>
    `the rear wheels lock first from stop ${balance.rearFirstFromStop ?? 1} of the repeated stops on`,
  'rear-may-lock-first': () => 'the rear wheels may lock first',
  'pedal-bottoms': () => 'the pedal reaches the floor',
  'pedal-may-bottom': () => 'the pedal may reach the floor',
  'fluid-boils': () => 'the fluid boils',
  'fluid-may-boil': () => 'the fluid may boil',
  'car-does-not-stop': () => 'the car no longer comes to rest in the repeated stops',
  'rotor-beyond-computing': () => 'the rotors get hotter than can be computed',
  'car-may-not-stop': () => 'the car may not come to rest',
};

function dangerSentence({ dangers, changed }: VerdictInput): string {
  const names = dangers.map(({ code }) => dangerNames[code]?.(changed) ?? 'see the warnings');
  return names.length === 0 ? '' : `DANGER: ${listOf([...new Set(names)])}; do not drive it like this.`;
}

/** Titles of those of the two whose pedal is on the floor before the pressure is there. */
export function bottomedOf({ reference, changed }: VerdictInput): readonly string[] {
  return [reference, changed].filter(({ pedalBottoms }) => pedalBottoms).map(({ title }) => title);
}

function distanceSentences(input: VerdictInput, say: Speaker): string[] {
  const [floor] = bottomedOf(input);
  if (floor !== undefined)
    return [
      `No verdict on distance: with "${floor}" the pedal reaches the floor before this pressure, and the distance would need travel that is not there.`,
    ];
  const { name } = subjectOf(input.changed.title, input.sameTires);
  return [`${name} ${distanceWords(input, say)}.`, limitWords(input, say)];
}

function limitWords({ reference, changed, difference, pedalForce }: VerdictInput, say: Speaker): string {
  const at = `at ${say.plain(pedalForce, 'force')}`;
  const before = reference.limitedBy !== 'brake torque';
  const after = changed.limitedBy !== 'brake torque';
  if (before && after) {
    const { low, high } = difference.distance_m;
    const same = low <= 0 && high >= 0;
    return `Before and after the tires are the limit ${at}${same ? ": more brake can't shorten this stop, only grip or a better balance can" : ''}.`;
  }
  if (after) return `Before, the brakes are the limit ${at}; with it the tires are.`;
  if (before) return `With it the brakes no longer reach the tires' limit ${at}: that takes a harder push.`;
  return `Before and after the brakes are the limit ${at}: the tires have grip left for a harder push.`;
}

/** g by which the first lock must move to be worth a sentence (assumed). */
const worthSaying = 0.03;

/** Front and rear match by the share of the adhesion that they use together when the first axle locks. */
function balanceWords({ reference, changed }: VerdictInput): string {
  const [before, after] = [reference.balance, changed.balance];
  if (before.lockDeceleration_g === null || after.lockDeceleration_g === null) return '';
  const [z0, z1] = [before.lockDeceleration_g.value, after.lockDeceleration_g.value];
  const sameAxle = before.firstToLock === after.firstToLock;
  if (sameAxle && Math.abs(z1 - z0) < worthSaying) return '';
  const was = sameAxle ? `${z0.toFixed(2)} g` : `the ${before.firstToLock} ones at ${z0.toFixed(2)} g`;
  const cured = before.firstToLock === 'rear' && after.firstToLock !== 'rear';
  const [e0, e1] = [before.efficiencyAtLock, after.efficiencyAtLock];
  const worse = e0 !== null && e1 !== null && e1 < e0 - worthSaying;
  const matched = worse && !cured ? ': front and rear match less well than before' : '';
  return `It moves the balance: the ${after.firstToLock} wheels are the first at their limit, at ${z1.toFixed(2)} g instead of ${was}${matched}.`;
}

/** Share of the draws that an end of an interval stands for. */
const few = 0.025;

function effortWords({ reference, changed, difference }: VerdictInput, say: Speaker): string {
  if (difference.pedalForceAtLimit_N === null) return '';
  if (reference.limitBeyondFootShare > few || changed.limitBeyondFootShare > few) return ''; // the cap cuts it
  const change = toldChange(difference.pedalForceAtLimit_N, 'force', trifles.force, say);
  if (change.kind !== 'less' && change.kind !== 'more') return '';
  return `The tires' limit takes ${say.range(change.least, change.most, 'force')} ${change.kind} on the pedal.`;
}

function travelWords({ difference }: VerdictInput, say: Speaker): string {
  const change = toldChange(difference.pedalTravel_m, 'travel', trifles.travel, say);
  const range = signedRange(difference.pedalTravel_m, 'travel', say);
  if (change.kind === 'none') return 'The pedal travel stays what it is.';
  if (change.kind === 'less' || change.kind === 'more') return `The pedal gets ${range}.`;
  return `No sure change of pedal travel (${range}).`;
}

/** Parts that change nothing are named: money that stays in the customer's pocket. */
function idlePartWords(input: VerdictInput, say: Speaker): string {
  const { byPart } = input.difference;
  if (byPart.length < 2 || bottomedOf(input).length > 0) return '';
  const idle = byPart.filter(({ distance_m }) => Math.abs(distance_m) < trifles.partDistance);
  if (idle.length === 0) return '';
  if (idle.length === byPart.length)
    return `None of its parts changes the distance of ${oneStop(input, say)}.`;
  const titles = listOf(idle.map(({ title }) => title));
  return `Of its parts these change nothing in the distance of ${oneStop(input, say)}: ${titles}.`;
}

function fluidWords({ difference, reference, changed }: VerdictInput, say: Speaker): string {
  if (!difference.byPart.some(({ part }) => part === 'fluid')) return '';
  const [before, after] = [reference.fluid, changed.fluid];
  if (before === null || after === null) return 'Fluid counts for the pedal, and for boiling when hot.';
  const boils = [before, after].map(({ boiling_C }) => say.rounded(boiling_C, 'temperature', 2));
  return `Fluid counts for the pedal, and for boiling when hot: at its age it boils at ${boils[1]} instead of ${boils[0]}.`;
}
