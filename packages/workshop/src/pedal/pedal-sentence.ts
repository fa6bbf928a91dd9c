import type { UnitSystem } from '@standstill/units';
import type { PedalReport } from '../results/pedal-report.ts';
import { listOf } from '../words/list-of.ts';
import { percent } from '../words/percent.ts';
import { speaker } from '../words/speaker.ts';
import type { Speaker } from '../words/speaker.ts';

type Told = Pick<PedalReport, 'push' | 'parts' | 'pedalForce_N' | 'circuitsLost' | 'measured'>;

/**
 * The answer in one sentence: what a measured pedal says where there is one, else where the travel goes; and what is
 * left with one circuit lost.
 *
 * @param report - the figures
 * @param units - units of the sentence
 * @returns the sentence
 */
export function pedalSentence(report: Told, units: UnitSystem): string {
  const say = speaker(units);
  const start = report.measured === null ? travelWords(report, say) : firstSentence(report.measured.verdict);
  const source = report.measured === null ? '' : "by the job's own figures, ";
  return `${start}; ${source}${lostWords(report, say)}.`;
}

function firstSentence(verdict: string): string {
  return verdict.slice(0, verdict.indexOf('. ') < 0 ? -1 : verdict.indexOf('. '));
}

function travelWords({ push, parts, pedalForce_N }: Told, say: Speaker): string {
  const force = say.plain(pedalForce_N, 'force');
  if (push.bottoms) return `At ${force} the pedal or the cylinder is at its end before the pressure is there`;
  const travel = say.range(push.travel_m.low, push.travel_m.high, 'travel');
  const most = parts.toSorted((a, b) => b.travel_m.value - a.travel_m.value).slice(0, 2);
  const takers = most.map(
    ({ title, travel_m }) => `${title} ${percent(travel_m.value / push.travel_m.value)}`,
  );
  return `At ${force} the pedal goes down ${travel}, ${percent(push.travelShare.value)} of its travel (most of it ${listOf(takers)})`;
}

function lostWords({ circuitsLost }: Told, say: Speaker): string {
  const bottoming = circuitsLost.filter(({ bottoms }) => bottoms);
  const short = circuitsLost.filter(({ fallsShort, bottoms }) => fallsShort && !bottoms);
  if (bottoming.length > 0) {
    const which =
      bottoming.length === circuitsLost.length ? 'either circuit' : bottoming[0]?.title.toLowerCase();
    return `with ${which} lost it is at the floor before the pressure for 0.25 g is there`;
  }
  if (short.length > 0) {
    const which = short.length === circuitsLost.length ? 'either circuit' : short[0]?.title.toLowerCase();
    return `with ${which} lost 500 N does not reach 0.25 g`;
  }
  const worst = circuitsLost.reduce((least, one) =>
    one.travelLeft_m.value < least.travelLeft_m.value ? one : least,
  );
  const low = Math.max(0, worst.travelLeft_m.low);
  const left = say.range(low, Math.max(low, worst.travelLeft_m.high), 'travel');
  return `with ${worst.title.toLowerCase()} lost ${left} of travel is left at 0.25 g`;
}
