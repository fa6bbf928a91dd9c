import type { HeatLimit, SetUpHeat } from '../results/heat-report.ts';
import { hottestRotor } from '../predict/warnings/heat-notes.ts';
import { listOf } from '../words/list-of.ts';
import type { Speaker } from '../words/speaker.ts';

type Told = Omit<SetUpHeat, 'sentence'>;

/** What gets too hot first with the central values; undefined where nothing does. */
export function firstPassed({ limits }: Pick<Told, 'limits'>): HeatLimit | undefined {
  return limits
    .filter(({ passedInStop }) => passedInStop !== null)
    .toSorted((one, other) => stopOf(one) - stopOf(other))[0];
}

function stopOf({ passedInStop }: HeatLimit): number {
  return passedInStop?.value ?? Infinity;
}

/** What one set-up does, in a sentence: what gets too hot first and when, or how far everything stays below. */
export function setUpHeatSentence(setUp: Told, scheduleText: string, say: Speaker): string {
  if (!setUp.isFinished) {
    const last = setUp.stops.at(-1)?.stop ?? 1;
    return `${setUp.title}: the brakes fade until the car no longer comes to rest, in stop ${last} of ${scheduleText}.`;
  }
  const first = firstPassed(setUp);
  if (first === undefined) return `${setUp.title}: ${calm(setUp, scheduleText, say)}`;
  return `${setUp.title}: ${passedWords(first, setUp, say)} in ${scheduleText}; ${fluidWords(setUp, say)}.`;
}

function calm(setUp: Told, scheduleText: string, say: Speaker): string {
  const faces = say.rounded(setUp.front.interface_C.value, 'temperature', 2);
  const reached = `front rotors reach ${faces}, ${fluidWords(setUp, say)}`;
  const unknown = unknownWords(setUp);
  if (unknown === '') return `nothing gets too hot in ${scheduleText}: ${reached}.`;
  return `whether something gets too hot in ${scheduleText} is not known, for ${unknown}: ${reached}.`;
}

/** °C above which one friction figure, or none past the table, says nothing of fade (common practice). */
const fadeBegins = 300;

/** Why nobody can say that nothing gets too hot; nothing where one can. */
function unknownWords({ limits, front, rear }: Pick<Told, 'limits' | 'front' | 'rear'>): string {
  const hotter = Math.max(front.interface_C.value, rear.interface_C.value);
  if (hotter > hottestRotor) return 'the rotors get hotter than the figures of iron hold';
  const pads = limits.filter(({ limit_C, highest_C }) => limit_C === null && highest_C.value > fadeBegins);
  const names = pads.map(({ what }) => what);
  return names.length === 0 ? '' : `the friction of the ${listOf(names)} is not stated up to where they fade`;
}

/** `the front pads get too hot first, past 860 °F in stop 5 (4 to 7)`. */
export function passedWords(limit: HeatLimit, { stops }: Pick<Told, 'stops'>, say: Speaker): string {
  const at = say.rounded(limit.limit_C?.value ?? NaN, 'temperature', 2);
  const verb = limit.what.endsWith('pads')
    ? `get too hot first (they fade at ${at})`
    : `boils first (at ${at})`;
  return `the ${limit.what} ${verb} ${stopWords(limit, stops.length)}`;
}

function stopWords({ passedInStop, what }: HeatLimit, stops: number): string {
  if (passedInStop === null) return '';
  if (stops < 2) return what.endsWith('fluid') ? 'on the way or while the car stands' : 'on the way';
  const { value, low, high } = passedInStop;
  const range = low === high ? '' : ` (${Math.round(low)} to ${Math.round(high)})`;
  return `in stop ${Math.round(value)}${range}`;
}

/** How near the fluid gets to boiling at the nearer axle. */
function fluidWords({ limits, fluid }: Told, say: Speaker): string {
  const [nearest] = limits
    .filter(({ what }) => what.endsWith('fluid'))
    .toSorted((one, other) => (one.margin_K?.value ?? Infinity) - (other.margin_K?.value ?? Infinity));
  if (nearest === undefined) return 'nothing is known of the fluid';
  const highest = say.rounded(nearest.highest_C.value, 'temperature', 2);
  const { low, high } = nearest.highest_C;
  const boils = say.rounded(fluid.boiling_C.value, 'temperature', 2);
  const range = say.range(low, high, 'temperature');
  const verb = nearest.passedInStop === null ? 'reaches' : 'would reach';
  return `the ${nearest.what} ${verb} ${highest} (${range}) and boils at ${boils} at its age`;
}

/** The answer for all set-ups. */
export function heatSentence(setUps: readonly SetUpHeat[], scheduleText: string, say: Speaker): string {
  const boils = setUps.filter(({ limits }) =>
    limits.some(({ what, passedInStop }) => what.endsWith('fluid') && passedInStop !== null),
  );
  const danger = boils.length > 0 || setUps.some(({ isFinished }) => !isFinished) ? 'DANGER: ' : '';
  const [only, second] = setUps;
  if (only !== undefined && second === undefined) return `${danger}${only.sentence}`;
  const clauses = setUps.map((setUp) => `"${setUp.title}" ${clause(setUp, say)}`);
  return `${danger}Too hot first in ${scheduleText}: ${clauses.join('; ')}.`;
}

function clause(setUp: SetUpHeat, say: Speaker): string {
  if (!setUp.isFinished) return 'the car no longer comes to rest';
  const first = firstPassed(setUp);
  if (first === undefined && unknownWords(setUp) !== '') return `is not known, for ${unknownWords(setUp)}`;
  if (first === undefined) {
    const faces = say.rounded(setUp.front.interface_C.value, 'temperature', 2);
    return `nothing (front rotors ${faces}, fluid ${say.rounded(hottestFluid(setUp), 'temperature', 2)} of ${say.rounded(setUp.fluid.boiling_C.value, 'temperature', 2)})`;
  }
  return `the ${first.what} ${stopWords(first, setUp.stops.length)}`;
}

function hottestFluid({ front, rear }: SetUpHeat): number {
  return Math.max(front.fluid_C.value, rear.fluid_C.value);
}
