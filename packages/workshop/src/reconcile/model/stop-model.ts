import { pedalForceFor, stopWorkspace, summarize, UnsolvedStopError } from '@standstill/braking';
import type { StopMarch } from '@standstill/braking';
import { OutOfRangeError } from '@standstill/numerics';
import type { Job } from '../../job/job.ts';
import type { Known } from '../../job/known.ts';
import { stopInputOf } from '../../predict/evaluate.ts';
import { settlingPlan } from '../../settle/plan/settling-plan.ts';
import type { Settled } from '../../settle/settle.ts';
import { figures, placeOf } from '../figure.ts';
import { driverSharePath } from './day-knowns.ts';
import { StopRecorder } from './stop-recorder.ts';

/** One of the set-ups that are asked. */
export interface AskedSetUp {
  readonly id: string;
  /** True where the log tells the start by the onset of the deceleration, so that what is before it is not in the distance. */
  readonly startsAtOnset: boolean;
}

export interface StopModelInput {
  readonly job: Job;
  readonly setUps: readonly AskedSetUp[];
  readonly knowns: readonly Known[];
  /** m/s. */
  readonly speed: number;
}

/** What a logger would find of each set-up's stop, as a function of what is not known. */
export interface StopModel {
  readonly knowns: readonly Known[];
  /** How many numbers an answer has: all figures of the first set-up, then of the next. */
  readonly size: number;
  /**
   * Fills `into` for one possible car and day: departures of each number from its middle, in spreads, from `place` of an
   * array on. NaN where such a car has no answer.
   */
  readonly answer: Answering;
  /** The same of the first set-up alone. */
  readonly answerFirst: Answering;
}

type Answering = (departures: Float64Array, place: number, into: Float64Array, intoPlace: number) => void;

/**
 * The figures of stops as a logger finds them, as a function of what is not known of car, road and foot.
 *
 * Equation: x = value + spread × z, kept inside the range that can be true; figures of `quickStop` at x
 * Assumes: as `quickStop`.
 *
 * @param input - job, set-ups, uncertain numbers, speed m/s
 * @returns the function; it keeps room to work in
 */
export function stopModel({ job, setUps, knowns, speed }: StopModelInput): StopModel {
  const { settled, fill } = settlingPlan(
    job,
    setUps.map(({ id }) => id),
    knowns,
    { speed },
  );
  const driver = knowns.findIndex(({ path }) => path === driverSharePath);
  const values = new Float64Array(knowns.length);
  const ask = askedStop();
  const answering =
    (count: number): Answering =>
    (departures, place, into, intoPlace) => {
      knowns.forEach(({ value, spread, low, high }, k) => {
        values[k] = Math.max(low, Math.min(high, value + spread * departures[place + k]!));
      });
      fill(values, 1, 0);
      const driverShare = driver < 0 ? undefined : values[driver]!;
      for (let index = 0; index < count; index += 1) {
        const { startsAtOnset } = setUps[index]!;
        ask(settled[index]!, { startsAtOnset, driverShare }, into, intoPlace + index * figures.length);
      }
    };
  return {
    knowns,
    size: setUps.length * figures.length,
    answer: answering(setUps.length),
    answerFirst: answering(1),
  };
}

interface Asking {
  readonly startsAtOnset: boolean;
  readonly driverShare: number | undefined;
}

type AskedStop = (settled: Settled, how: Asking, into: Float64Array, place: number) => void;

function askedStop(): AskedStop {
  const march = stopWorkspace();
  const recorder = new StopRecorder();
  return (settled, how, into, place) => {
    into.fill(NaN, place, place + figures.length);
    try {
      readStop(settled, how, { march, recorder }, into, place);
    } catch (error) {
      if (!(error instanceof OutOfRangeError || error instanceof UnsolvedStopError)) throw error;
      into.fill(NaN, place, place + figures.length);
    }
  };
}

interface Room {
  readonly march: StopMarch;
  readonly recorder: StopRecorder;
}

function readStop(
  settled: Settled,
  { startsAtOnset, driverShare }: Asking,
  { march, recorder }: Room,
  into: Float64Array,
  place: number,
): void {
  const input = { ...stopInputOf(settled), ...(driverShare === undefined ? {} : { driverShare }) };
  if (!(input.foot.force > 0)) return;
  recorder.begin();
  march.start(input, true, recorder.note);
  march.run();
  if (!march.cameToRest) return;
  const { distance, meanFullyDevelopedDeceleration: developed } = summarize(input, march);
  const { onset, there } = recorder.rise(developed);
  const pressure = recorder.developedPressure(input.speed);
  const holds = pressure < 0.999 * march.rise.held;
  const force = holds ? pedalForceFor({ setUp: input.setUp, frontPressure: pressure }) : input.foot.force;
  into[place + placeOf.distance] = startsAtOnset ? distance - input.speed * onset : distance;
  into[place + placeOf.developed] = developed;
  into[place + placeOf.buildUp] = startsAtOnset ? there - onset : there;
  into[place + placeOf.perPressure] = developed / pressure;
  into[place + placeOf.perForce] = developed / force;
}
