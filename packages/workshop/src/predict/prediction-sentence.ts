import type { UnitSystem } from '@standstill/units';
import type { SetUpPrediction } from '../results/prediction.ts';
import type { Warning } from '../results/warning.ts';
import { listOf } from '../words/list-of.ts';
import { nameInSentence } from '../words/name-in-sentence.ts';
import { speaker } from '../words/speaker.ts';
import { distanceWords } from './verdict.ts';
import type { VerdictInput } from './verdict.ts';

interface PredictionSentenceInput {
  readonly first: SetUpPrediction;
  readonly changes: readonly VerdictInput[];
  /** Ids of set-ups that change tires: for those, tires are part of the answer. */
  readonly withTires: readonly string[];
  readonly warnings: readonly Warning[];
  /** m/s. */
  readonly speed: number;
  /** N. */
  readonly pedalForce: number;
  readonly units: UnitSystem;
}

/** The answer of the whole prediction, in words that a person can repeat; dangers first. */
export function predictionSentence(input: PredictionSentenceInput): string {
  const answer = input.changes.length === 0 ? aloneWords(input) : changeWords(input);
  return `${dangerWords(input)}${answer}`;
}

function aloneWords({ first, speed, pedalForce, units }: PredictionSentenceInput): string {
  const say = speaker(units);
  const { low, high } = first.distance_m;
  const range = say.range(low, high, 'stopping-distance');
  const limit =
    first.limitedBy === 'brake torque'
      ? 'the brakes, not the tires, are the limit'
      : 'the tires are the limit';
  return `${first.title}, the car stops from ${say.plain(speed, 'speed')} in ${range} at ${say.plain(pedalForce, 'force')} on the pedal; ${limit}.`;
}

function changeWords({ changes, withTires, units }: PredictionSentenceInput): string {
  const say = speaker(units);
  const clauses = changes.map((change) => {
    const alone = withTires.includes(change.changed.id) ? '' : ' alone';
    return `${nameInSentence(change.changed.title)}${alone} ${distanceWords(change, say)} here`;
  });
  const withoutTires = changes.filter(({ changed }) => !withTires.includes(changed.id));
  const tires = withoutTires.length > 0 ? `; ${tireWords(withoutTires)}` : '';
  return `${clauses.join('; ').replace(/; The /g, '; the ')}${tires}.`;
}

/** What the brakes can not have done. */
function tireWords(changes: readonly VerdictInput[]): string {
  const limited = changes.every(({ changed }) => changed.limitedBy !== 'brake torque');
  return limited
    ? 'the rest of the gain people report would be tires, surface or driver'
    : 'the tires still have grip left at this pedal force';
}

function dangerWords({ warnings }: PredictionSentenceInput): string {
  const dangers = warnings.filter(({ severity }) => severity === 'danger');
  if (dangers.length === 0) return '';
  const kinds = new Set(dangers.map(({ code }) => dangerNames[code] ?? 'see the warnings'));
  return `DANGER: ${listOf([...kinds])}. `;
}

const dangerNames: Readonly<Record<string, string>> = {
  'rear-locks-first': 'the rear wheels lock first in one of these set-ups',
  'pedal-bottoms': 'the pedal bottoms in one of these set-ups',
};
