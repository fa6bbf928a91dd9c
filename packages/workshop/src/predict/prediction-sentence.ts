import type { UnitSystem } from '@standstill/units';
import type { SetUpPrediction } from '../results/prediction.ts';
import type { Warning } from '../results/warning.ts';
import { listOf } from '../words/list-of.ts';
import { speaker } from '../words/speaker.ts';
import { subjectOf } from '../words/subject-of.ts';
import { distanceWords } from './distance-words.ts';
import { heatClause } from './heat-words.ts';
import type { VerdictInput } from './verdict.ts';

interface PredictionSentenceInput {
  readonly setUps: readonly SetUpPrediction[];
  readonly changes: readonly VerdictInput[];
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
  return [...dangerWords(input), answer].join(' ');
}

function aloneWords({ setUps, speed, pedalForce, units }: PredictionSentenceInput): string {
  const say = speaker(units);
  const [first] = setUps;
  if (first === undefined) return 'There is no set-up to answer about.';
  const range = say.range(first.distance_m.low, first.distance_m.high, 'stopping-distance');
  const limit =
    first.limitedBy === 'brake torque'
      ? 'the brakes, not the tires, are the limit'
      : 'the tires are the limit';
  return `${first.title}: the car stops from ${say.plain(speed, 'speed')} in ${range} at ${say.plain(pedalForce, 'force')} on the pedal; ${limit}.`;
}

function changeWords({ changes, units }: PredictionSentenceInput): string {
  const say = speaker(units);
  const clauses = changes.map((change, index) => {
    const { name } = subjectOf(change.changed.title, change.sameTires);
    const subject = index === 0 ? name : name.replace(/^The /, 'the ');
    const here = index === 0 ? ' here' : '';
    return `${subject} ${distanceWords(change, say, here)}${heatClause(change, say)}`;
  });
  const brakesOnly = changes.filter(({ sameTires }) => sameTires);
  return `${[...clauses, ...tireWords(brakesOnly)].join('; ')}.`;
}

/** What the brakes can not have done. */
function tireWords(brakesOnly: readonly VerdictInput[]): string[] {
  if (brakesOnly.length === 0) return [];
  const limited = brakesOnly.every(({ changed }) => changed.limitedBy !== 'brake torque');
  return [
    limited
      ? 'the rest of the gain people report would be tires, surface or driver'
      : 'the tires still have grip left at this pedal force',
  ];
}

const dangerNames: Readonly<Record<string, string>> = {
  'rear-locks-first': 'the rear wheels lock first',
  'pedal-bottoms': 'the pedal bottoms',
};

function dangerWords({ warnings, setUps }: PredictionSentenceInput): string[] {
  return Object.entries(dangerNames).flatMap(([code, what]) => {
    const ids = new Set(warnings.filter((warning) => warning.code === code).map(({ about }) => about));
    const titles = setUps.filter(({ id }) => ids.has(id)).map(({ title }) => `"${title}"`);
    return titles.length === 0 ? [] : [`DANGER: with ${listOf(titles)} ${what}.`];
  });
}
