import type { RejectedStop } from '@standstill/logs';
import { mean } from '@standstill/numerics';
import type { UnitSystem } from '@standstill/units';
import type { StopResult } from '../results/log-report.ts';
import { speaker } from '../words/speaker.ts';
import type { Speaker } from '../words/speaker.ts';
import { plural } from '../words/plural.ts';
import { hardestStop } from './hardest-stop.ts';
import { leftOutReason } from './judge/left-out-reason.ts';

interface LogSentenceInput {
  readonly name: string;
  readonly stops: readonly StopResult[];
  readonly rejected: readonly RejectedStop[];
  /** m/s. */
  readonly nominalSpeed: number | null;
  readonly units: UnitSystem;
}

/** What a log holds, in one sentence that a person can repeat. */
export function logSentence(input: LogSentenceInput): string {
  const { name, stops, rejected } = input;
  const counted = stops.filter((stop) => stop.counted);
  if (stops.length === 0) return `${name}: ${noStop(rejected)}`;
  const say = speaker(input.units);
  const left = stops.length - counted.length;
  const out =
    left === 0
      ? ''
      : `; ${left} left out, see ${left === 1 ? 'its reason' : 'their reasons'}${hardest(stops, counted, say)}`;
  if (counted.length === 0) {
    return `${name}: ${plural(stops.length, 'stop')} found, none fit to count${whyNone(stops)}`;
  }
  return `${name}: ${plural(counted.length, 'stop')} ${fromSpeed(input, say)}, ${distances(input, counted, say)}${out}.`;
}

/** The stop that a person meant is the hardest one: its reason is the one to give. */
function whyNone(stops: readonly StopResult[]): string {
  const hard = hardestStop(stops);
  const reason = (hard === undefined ? null : leftOutReason(hard)) ?? '';
  const which = stops.length === 1 ? '' : `; the hardest, stop ${hard?.number ?? 1}`;
  return `${which}: ${reason.replace(/\.$/, '')}.`;
}

/** Where others come before it, the hardest stop that counts is named. */
function hardest(stops: readonly StopResult[], counted: readonly StopResult[], say: Speaker): string {
  const hard = hardestStop(counted);
  if (hard === undefined || stops[0]?.counted === true) return '';
  const value = hard.meanDecelerationByDistance_m_s2;
  const howHard = say.central({ value, low: 0.97 * value, high: 1.03 * value }, 'deceleration');
  return `; the hardest that counts is stop ${hard.number}, ${howHard} from ${say.plain(hard.entrySpeed_m_s, 'speed')}`;
}

function noStop(rejected: readonly RejectedStop[]): string {
  const [first] = rejected;
  if (first === undefined)
    return 'no stop found: the speed never falls from driving speed to rest under braking.';
  const times =
    rejected.length === 1 ? 'the car came to rest once' : `the car came to rest ${rejected.length} times`;
  return `no stop that can be measured; ${times}, and the first time ${lowered(first.reason)}`;
}

function fromSpeed({ nominalSpeed, stops }: LogSentenceInput, say: Speaker): string {
  if (nominalSpeed !== null) return `from ${say.plain(nominalSpeed, 'speed')}`;
  const speeds = stops.filter((stop) => stop.counted).map((stop) => stop.entrySpeed_m_s);
  const [least, most] = [Math.min(...speeds), Math.max(...speeds)];
  return `from ${least === most ? say.plain(least, 'speed') : say.range(least, most, 'speed')}`;
}

function distances({ nominalSpeed }: LogSentenceInput, counted: readonly StopResult[], say: Speaker): string {
  const corrected = counted.map((stop) => (nominalSpeed === null ? null : stop.correctedDistance_m));
  const usable = corrected.filter((distance): distance is number => distance !== null);
  const all = usable.length === counted.length;
  const values = all ? usable : counted.map((stop) => stop.applicationDistance_m);
  const how = all ? 'corrected to that speed' : 'as driven';
  const error = mean(counted.map((stop) => stop.distanceStandardError_m));
  const [least, most, middle] = [Math.min(...values), Math.max(...values), mean(values)].map((value) =>
    oneDistance(value, error, say),
  );
  if (values.length === 1) return `${middle ?? ''} ${how}`;
  const between = least === most ? `about ${most ?? ''}` : `${withoutUnit(least ?? '')} to ${most ?? ''}`;
  return `${between} ${how}, mean ${middle ?? ''}`;
}

function lowered(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1);
}

/** The unit stands once, at the end of a range. */
function withoutUnit(text: string): string {
  return text.replace(/ [^ ]+$/u, '');
}

/** One distance with the digits that its own standard error supports. */
function oneDistance(value: number, standardError: number, say: Speaker): string {
  const half = 1.96 * standardError;
  return say.central({ value, low: value - half, high: value + half }, 'stopping-distance');
}
