import { randomStream } from '@standstill/numerics';
import type { RandomStream } from '@standstill/numerics';
import type { Job } from '../job/job.ts';
import type { LogReport, StopResult } from '../results/log-report.ts';
import { figures, placeOf } from './figure.ts';
import { dayKnowns } from './model/day-knowns.ts';
import { stopModel } from './model/stop-model.ts';
import type { StopModel } from './model/stop-model.ts';

/** A car and day as they truly are, for tests: the model at numbers that nobody was told. */
export interface MadeTruth {
  readonly model: StopModel;
  /** In spreads of the job. */
  readonly departures: Float64Array;
  readonly speed: number;
}

/** What the tests add to a truth, each one standard deviation: from stop to stop, and of measuring. */
const scatter = {
  grip: 0.01,
  foot: 0.03,
  ramp: 0.1,
  distance: 0.15,
  developed: 0.004,
  buildUp: 0.02,
} as const;

/** Draws a truth from the job's spreads, some of them made wider. */
export function madeTruth(
  job: Job,
  setUpIds: readonly string[],
  speed: number,
  seed: number,
  wider: Readonly<Record<string, number>> = {},
): MadeTruth {
  const knowns = dayKnowns(job, setUpIds);
  const model = stopModel({
    job,
    setUps: setUpIds.map((id) => ({ id, startsAtOnset: false })),
    knowns,
    speed,
  });
  const stream = randomStream(seed, 'truth');
  const departures = Float64Array.from(knowns, ({ path }) => {
    const by = Object.entries(wider).find(([end]) => path.endsWith(end))?.[1] ?? 1;
    return by * Math.max(-4, Math.min(4, stream.normal()));
  });
  return { model, departures, speed };
}

/** Figures of a set-up of a truth, its tires gripping so many times as much, SI. */
export function trueFigures({ model, departures }: MadeTruth, setUp: number, grip = 1): Float64Array {
  const moved = Float64Array.from(departures);
  multiply(model, moved, 'conditions.surfaceFactor', grip);
  const into = new Float64Array(model.size);
  model.answer(moved, 0, into, 0);
  return into.slice(setUp * figures.length, (setUp + 1) * figures.length);
}

export interface MadeStops {
  readonly setUp: number;
  readonly stops: number;
  readonly seed: number;
  readonly grip?: number;
  /** s, of the logger. */
  readonly delay: number;
}

/** Drives a set of stops of a truth through an imperfect logger. */
export function madeReport(truth: MadeTruth, { setUp, stops, seed, grip = 1, delay }: MadeStops): LogReport {
  const stream = randomStream(seed, `stops of ${setUp}`);
  const rows = Array.from({ length: stops }, () => drivenStop(truth, { setUp, grip, delay }, stream));
  return {
    kind: 'log-report',
    version: 1,
    sentence: '',
    source: { name: `set-${setUp}-${seed}.csv`, format: 'CSV', bytes: 1, rows: 1 },
    epoch: null,
    duration_s: 60 * stops,
    channels: [],
    headings: null,
    sensors: [],
    issues: [],
    nominalSpeed_m_s: truth.speed,
    stops: rows.map((row, index) => stopOf(row, index, truth.speed)),
  };
}

function drivenStop(
  { model, departures, speed }: MadeTruth,
  { setUp, grip, delay }: Pick<Required<MadeStops>, 'setUp' | 'grip' | 'delay'>,
  stream: RandomStream,
): Float64Array {
  const moved = Float64Array.from(departures);
  multiply(model, moved, 'conditions.surfaceFactor', grip * (1 + scatter.grip * stream.normal()));
  multiply(model, moved, 'conditions.pedalForce', 1 + scatter.foot * stream.normal());
  multiply(model, moved, 'conditions.pedalRamp', 1 + scatter.ramp * stream.normal());
  const into = new Float64Array(model.size);
  model.answer(moved, 0, into, 0);
  const row = into.slice(setUp * figures.length, (setUp + 1) * figures.length);
  row[placeOf.distance]! += speed * delay + scatter.distance * stream.normal();
  row[placeOf.developed]! *= 1 + scatter.developed * stream.normal();
  row[placeOf.buildUp]! += delay + scatter.buildUp * stream.normal();
  return row;
}

/** Multiplies one number of a car, by its departure. */
function multiply({ knowns }: StopModel, departures: Float64Array, path: string, by: number): void {
  const k = knowns.findIndex((known) => known.path === path);
  const known = knowns[k];
  if (known === undefined) throw new TypeError(`${path} is not uncertain`);
  const value = known.value + known.spread * departures[k]!;
  departures[k] = (value * by - known.value) / known.spread;
}

function stopOf(row: Float64Array, index: number, speed: number): StopResult {
  const distance = row[placeOf.distance]!;
  return {
    number: index + 1,
    clock: null,
    start_s: 60 * index + distance,
    end_s: 60 * index + distance + 4,
    startBy: 'brake-switch',
    entrySpeed_m_s: speed,
    applicationDistance_m: distance,
    distanceStandardError_m: Math.hypot(scatter.distance, 0.05 * speed),
    startDelayError_s: 0.05,
    gateDistance_m: null,
    correctedDistance_m: distance,
    duration_s: 4,
    meanDecelerationByDistance_m_s2: speed ** 2 / (2 * distance),
    meanDecelerationByTime_m_s2: speed / 4,
    meanFullyDevelopedDeceleration_m_s2: row[placeOf.developed]!,
    peakDeceleration_m_s2: row[placeOf.developed]!,
    buildUpTime_s: row[placeOf.buildUp]!,
    sampleRate_Hz: 25,
    counted: true,
    flags: [],
    judgement: null,
    temperatures: [],
    developedPressure_Pa: null,
    developedPedalForce_N: null,
    heading_rad: null,
    trace: { time_s: [], speed_m_s: [], speedStandardError_m_s: [], deceleration_m_s2: [] },
  };
}
