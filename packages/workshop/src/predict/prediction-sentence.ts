import type { UnitSystem } from '@standstill/units';
import type { SetUpPrediction } from '../results/prediction.ts';
import type { Warning } from '../results/warning.ts';
import { listOf } from '../words/list-of.ts';
import { speaker } from '../words/speaker.ts';
import type { Speaker } from '../words/speaker.ts';
import { subjectOf } from '../words/subject-of.ts';
import { dangerWords } from './danger-words.ts';
import { distanceChange, distanceWords, oneStop } from './distance-words.ts';
import { heatClause, lastStopChange, lastStopWords } from './heat-words.ts';
import { forceThereWords } from './warnings/pedal-warnings.ts';
import { bottomedOf } from './verdict.ts';
import type { VerdictInput } from './verdict.ts';

interface PredictionSentenceInput {
  readonly setUps: readonly SetUpPrediction[];
  readonly changes: readonly VerdictInput[];
  readonly warnings: readonly Warning[];
  /** m/s. */
  readonly speed: number;
  /** N. */
  readonly pedalForce: number;
  readonly wet: boolean;
  readonly units: UnitSystem;
}

/** The answer of the whole prediction, in words that a person can repeat: dangers first, then the best safe set-up. */
export function predictionSentence(input: PredictionSentenceInput): string {
  const water = input.wet
    ? ['On a wet road grip differs from tire to tire by more than is known, so no saving here is sure.']
    : [];
  return [...dangerWords(input), ...water, answer(input)].join(' ');
}

function answer(input: PredictionSentenceInput): string {
  const say = speaker(input.units);
  const [only, ...more] = input.changes;
  if (only === undefined) return aloneWords(input, say);
  if (more.length > 0) return manyWords(input.changes, say);
  if (bottomedOf(only).length > 0) return floorWords(input.changes);
  const saves = ['less', 'perhaps-less'].includes(distanceChange(only, say).kind);
  return `${capital(clause(only, say, ' here'))}${cureWords(only)}; ${tireWords([only], saves)}.`;
}

/** What a dangerous set-up saves is no advice to drive it. */
function cureWords({ changed, sameTires, dangers, referenceInDanger }: VerdictInput): string {
  if (dangers.length === 0) return '';
  const { verb } = subjectOf(changed.title, sameTires);
  return referenceInDanger
    ? `, and ${verb('do', 'does')} not cure that`
    : ', but must not be driven like this';
}

function aloneWords({ setUps, speed, pedalForce }: PredictionSentenceInput, say: Speaker): string {
  const [first] = setUps;
  if (first === undefined) return 'There is no set-up to answer about.';
  const range = say.range(first.distance_m.low, first.distance_m.high, 'stopping-distance');
  const limit =
    first.limitedBy === 'brake torque'
      ? 'the brakes, not the tires, are the limit'
      : 'the tires are the limit';
  const force = first.pedalBottoms
    ? `${forceThereWords(first.pedalForceThere_N, say)}, where the pedal reaches the floor`
    : `${say.plain(pedalForce, 'force')} on the pedal`;
  return `${first.title}: the car stops from ${say.plain(speed, 'speed')} in ${range} at ${force}; ${limit}.`;
}

function floorWords(changes: readonly VerdictInput[]): string {
  const titles = [...new Set(changes.flatMap(bottomedOf))].map((title) => `"${title}"`);
  return `No distance is set against another where a pedal is on the floor: ${listOf(titles)} first.`;
}

/** One clause on the best safe set-up, one at most on the others, and what the brakes can not have done. */
function manyWords(changes: readonly VerdictInput[], say: Speaker): string {
  const told = changes.filter((change) => bottomedOf(change).length === 0);
  if (told.length === 0) return floorWords(changes);
  const safe = told.filter(({ dangers }) => dangers.length === 0);
  if (safe.length === 0)
    return 'No set-up here is safe as it stands: mend that first, then compare distances.';
  const savers = safe.filter((change) => !change.wet && distanceChange(change, say).kind === 'less');
  const [best, ...alsoGood] = savers.toSorted(
    (a, b) => a.difference.distance_m.value - b.difference.distance_m.value,
  );
  const clauses =
    best === undefined
      ? noSaverWords(safe, safe.length < changes.length, say)
      : [clause(best, say, ' here'), ...othersWords(safe, alsoGood, best, say)];
  return `${capital(clauses.join('; '))}; ${tireWords(safe, best !== undefined)}.`;
}

function clause(change: VerdictInput, say: Speaker, where: string): string {
  const { name } = subjectOf(change.changed.title, change.sameTires);
  return `${name} ${distanceWords(change, say, where)}${heatClause(change, say)}`;
}

function othersWords(
  safe: readonly VerdictInput[],
  alsoGood: readonly VerdictInput[],
  best: VerdictInput,
  say: Speaker,
): string[] {
  const costs = costWords(safe, say);
  if (costs.length > 0) return costs;
  if (alsoGood.length > 0) return ['other safe ones save no more'];
  return safe.some((change) => change !== best) ? ['no other safe one saves for sure'] : [];
}

function noSaverWords(safe: readonly VerdictInput[], someAreNot: boolean, say: Speaker): string[] {
  const [first] = safe;
  if (first === undefined) return [];
  const none = `no ${someAreNot ? 'safe ' : ''}set-up here shortens ${oneStop(first, say)} from ${say.plain(first.speed, 'speed')} for sure`;
  return [none, ...lastStopBest(safe, say), ...costWords(safe, say)];
}

function lastStopOf({ difference }: VerdictInput): number {
  return difference.lastRepeatedStop_m?.value ?? 0;
}

/** The set-up that does most for the last of the repeated stops. */
function lastStopBest(safe: readonly VerdictInput[], say: Speaker): string[] {
  const [best] = safe
    .filter((change) => !change.wet && lastStopChange(change, say)?.kind === 'less')
    .toSorted((a, b) => lastStopOf(a) - lastStopOf(b));
  if (best === undefined) return [];
  const { name, verb } = subjectOf(best.changed.title, best.sameTires);
  return [`${inside(name)} ${verb('make', 'makes')} ${lastStopWords(best, say)}`];
}

/** The set-up that costs most. */
function costWords(safe: readonly VerdictInput[], say: Speaker): string[] {
  const [worst] = safe
    .filter((change) => distanceChange(change, say).kind === 'more')
    .toSorted((a, b) => b.difference.distance_m.value - a.difference.distance_m.value);
  if (worst === undefined) return [];
  const { name, verb } = subjectOf(worst.changed.title, worst.sameTires);
  const { low, high } = worst.difference.distance_m;
  return [`${inside(name)} ${verb('cost', 'costs')} ${say.range(low, high, 'stopping-distance')}`];
}

/** What the brakes can not have done. */
function tireWords(changes: readonly VerdictInput[], saves: boolean): string {
  const brakesOnly = changes.filter(({ sameTires }) => sameTires);
  if (brakesOnly.length === 0) return 'new tires are part of that';
  if (brakesOnly.some(({ changed }) => changed.limitedBy === 'brake torque'))
    return 'the tires still have grip left at this pedal force';
  return saves
    ? 'the rest of the gain people report would be tires, surface or driver'
    : 'a gain that people report would be tires, surface or driver';
}

function inside(name: string): string {
  return name.replace(/^The /, 'the ');
}

function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}
