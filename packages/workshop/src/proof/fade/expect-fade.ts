import { runSchedule } from '@standstill/braking';
import type { ScheduledStop } from '@standstill/braking';
import { linearFit, OutOfRangeError } from '@standstill/numerics';
import { drawSheet } from '../../draws/draw-sheet.ts';
import { intervalOf } from '../../draws/interval-of.ts';
import { knownsOf } from '../../draws/knowns-of.ts';
import { orNone } from '../../draws/or-none.ts';
import type { Job } from '../../job/job.ts';
import { footThere } from '../../predict/foot-there.ts';
import { SetUpRangeError } from '../../predict/set-up-range-error.ts';
import { settle } from '../../settle/settle.ts';
import type { Settled } from '../../settle/settle.ts';
import { startTemperatureOf } from '../differences/measured-condition.ts';
import type { RunSet } from '../sets/run-set.ts';
import { drivenEvents } from './driven-events.ts';
import { drivenStops } from './driven-stop.ts';
import type { DrivenStop } from './driven-stop.ts';
import type { ExpectedFade } from './expected-fade.ts';

export interface ExpectFadeInput {
  /** Id in the job. */
  readonly setUp: string;
  /** The stops as measured: the model drives as many, from the same speeds, after the same rests. */
  readonly set: RunSet;
  /** m/s, that distances are corrected to. */
  readonly nominalSpeed: number;
  /** 60 where absent. */
  readonly draws?: number;
  /** Any whole number; 1 where absent. */
  readonly seed?: number;
}

/**
 * Answers what the model expects of a row of stops as it was driven: how much longer the last one gets, and how hot the
 * rotors are before each.
 *
 * Equation: as `runSchedule`; growth of the line through the distances of the stops that counted, corrected to the
 * nominal speed by the squared ratio, interval from the draws of the job's spreads
 * Assumes: the foot of the job in every stop; the speed regained at 2.5 m/s² and held until the next stop.
 *
 * @param job - the job
 * @param input - set-up, measured stops, nominal speed in m/s; draws, seed
 * @returns growth, m, and temperatures, °C; null where the car does not come to rest in every stop
 * @throws SetUpRangeError where the set-up is outside what the formulas are valid for
 */
export function expectFade(job: Job, input: ExpectFadeInput): ExpectedFade | null {
  const { setUp, set, nominalSpeed, draws = 60, seed = 1 } = input;
  const driven = drivenStops(set);
  const start = firstTemperature(set);
  const ask: FadeAsk = { driven, start, nominalSpeed };
  const central = withinRange(job, setUp, () => fadeRun(settle(job, setUp), ask));
  if (central === null) return null;
  const sheet = drawSheet({ knowns: knownsOf(job, [setUp]), draws, seed });
  const growths = sheet.flatMap((draw) => orNone(() => fadeRun(settle(job, setUp, draw), ask))?.growth ?? []);
  return {
    setUp,
    growth: intervalOf(central.growth, Float64Array.from(growths)),
    temperatures: central.temperatures,
    warnings:
      start === null
        ? [
            'Nobody recorded or wrote down how warm the rotors were before the first stop: the model starts at the temperature of the job.',
          ]
        : [],
  };
}

interface FadeAsk {
  readonly driven: readonly DrivenStop[];
  /** °C; null takes the job's. */
  readonly start: number | null;
  readonly nominalSpeed: number;
}

interface FadeRun {
  /** m. */
  readonly growth: number;
  /** °C. */
  readonly temperatures: readonly number[];
}

function fadeRun(settled: Settled, { driven, start, nominalSpeed }: FadeAsk): FadeRun | null {
  const { setUp, force } = footThere(settled.setUp, settled.foot.force);
  const temperature = start ?? settled.startTemperature;
  const { stops, isFinished } = runSchedule({
    setUp,
    road: settled.road,
    events: drivenEvents(driven, { ...settled.foot, force }),
    rotorTemperatures: { front: temperature, rear: temperature },
  });
  if (!isFinished || stops.some(({ distance }) => !Number.isFinite(distance))) return null;
  const counted = stops.filter((_, index) => driven[index]?.isCounted === true);
  if (counted.length < 3) return null;
  const numbers = counted.map(({ number }) => number);
  const { slope } = linearFit(
    numbers,
    counted.map(({ distance, from }) => distance * (nominalSpeed / from) ** 2),
  );
  const span = (numbers.at(-1) ?? 0) - (numbers[0] ?? 0);
  return { growth: slope * span, temperatures: stops.map(hottestAtStart) };
}

function hottestAtStart({ front, rear }: ScheduledStop): number {
  return Math.max(front.bulkAtStart, rear.bulkAtStart);
}

/** Before the first stop: as recorded, else as written down. */
function firstTemperature(set: RunSet): number | null {
  const first = set.reports[0]?.stops[0];
  const recorded = first === undefined ? null : startTemperatureOf(first);
  return recorded ?? set.runs?.[0]?.startTemperature?.value ?? null;
}

function withinRange<T>(job: Job, id: string, answer: () => T): T {
  try {
    return answer();
  } catch (error) {
    const title = job.setUps.find((setUp) => setUp.id === id)?.title ?? id;
    if (error instanceof OutOfRangeError) throw new SetUpRangeError(id, title, error);
    throw error;
  }
}
