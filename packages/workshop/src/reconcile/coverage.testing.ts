import { randomStream } from '@standstill/numerics';
import type { Job } from '../job/job.ts';
import type { Estimate } from '../results/estimate.ts';
import { explainStops } from './explain-stops.ts';
import { placeOf } from './figure.ts';
import { madeReport, madeTruth, trueFigures } from './made-stops.testing.ts';
import type { MadeTruth } from './made-stops.testing.ts';

export interface CoverageInput {
  readonly job: Job;
  readonly setUps: readonly [before: string, after: string];
  /** Id of the tires. */
  readonly tires: string;
  readonly cases: number;
  readonly draws: number;
  /** How much wider than the job says the truths of grip, pads and foot are drawn, 1. */
  readonly wider?: number;
}

/** How many stated intervals hold the truth, of how many. */
export interface Coverage {
  readonly grip: Count;
  readonly distance: Count;
  readonly expected: Count;
  readonly unexplained: Count;
  readonly share: Count;
  /** Cases in which the stops were said not to fit the job. */
  readonly misfits: number;
  /** m, median width of the distance before by the job alone and after learning. */
  readonly width: { readonly byJob: number; readonly learned: number };
}

interface Count {
  held: number;
  of: number;
}

/** m/s. */
const speed = 60 * 0.44704;

/**
 * Counts how often the stated 95 % intervals hold the truth, over cars, days, loggers and new tires that were drawn: four
 * to eight stops a set, up to 15 % more grip after, a delay of the logger that nobody knows.
 */
export function coverageOf(input: CoverageInput): Coverage {
  const { job, setUps, cases, wider = 1 } = input;
  const counts = {
    grip: { held: 0, of: 0 },
    distance: { held: 0, of: 0 },
    expected: { held: 0, of: 0 },
    unexplained: { held: 0, of: 0 },
    share: { held: 0, of: 0 },
  };
  const widths: { byJob: number; learned: number }[] = [];
  let misfits = 0;
  for (let seed = 0; seed < cases; seed += 1) {
    const wide = { peakFriction: wider, surfaceFactor: wider, '.friction': wider, pedalRamp: wider };
    const truth = madeTruth(job, setUps, speed, seed, wide);
    const one = drivenCase(input, truth, seed);
    if (one === null) continue;
    const { found, grip, distance, brakes, whole } = one;
    count(counts.grip, found.learned.find(({ path }) => path === 'tires.grip')?.learned, grip);
    count(counts.distance, found.observations[0]?.learned, distance);
    count(counts.expected, found.change?.expected_m, brakes);
    count(counts.unexplained, found.change?.unexplained_m, whole - brakes);
    count(counts.share, found.change?.share, brakes / whole);
    if (found.fit.p < 0.01) misfits += 1;
    const [old] = found.observations;
    if (old !== undefined) widths.push({ byJob: widthOf(old.byJob), learned: widthOf(old.learned) });
  }
  const median = (pick: (each: (typeof widths)[number]) => number): number =>
    widths.map(pick).sort((a, b) => a - b)[Math.floor(widths.length / 2)] ?? NaN;
  return {
    ...counts,
    misfits,
    width: { byJob: median(({ byJob }) => byJob), learned: median(({ learned }) => learned) },
  };
}

function drivenCase({ job, setUps, tires, draws }: CoverageInput, truth: MadeTruth, seed: number) {
  const stream = randomStream(seed, 'case');
  const [grip, delay, stops] = [1 + 0.15 * stream.uniform(), 0.05 * stream.normal(), 4 + stream.below(5)];
  const before = trueFigures(truth, 0)[placeOf.distance]!;
  const brakes = trueFigures(truth, 1)[placeOf.distance]! - before;
  const whole = trueFigures(truth, 1, grip)[placeOf.distance]! - before;
  if (![before, brakes, whole].every(Number.isFinite)) return null;
  const found = explainStops({
    job,
    before: {
      setUp: setUps[0],
      reports: [madeReport(truth, { setUp: 0, stops, seed: 2 * seed, delay })],
    },
    after: {
      setUp: setUps[1],
      reports: [madeReport(truth, { setUp: 1, stops, seed: 2 * seed + 1, delay, grip })],
    },
    nominalSpeed: speed,
    confounders: ['tires: old before, new after'],
    draws,
    seed,
  });
  if (found.kind !== 'reconciliation') return null;
  const trueGrip =
    trueValue(truth, `parts.${tires}.peakFriction`) * trueValue(truth, 'conditions.surfaceFactor');
  return { found, grip: trueGrip, distance: before, brakes, whole };
}

function trueValue({ model, departures }: MadeTruth, wanted: string): number {
  const k = model.knowns.findIndex(({ path }) => path === wanted);
  const known = model.knowns[k];
  if (known === undefined) throw new TypeError(`${wanted} is not uncertain`);
  return Math.max(known.low, Math.min(known.high, known.value + known.spread * departures[k]!));
}

function count(into: Count, interval: Estimate | null | undefined, truth: number): void {
  if (interval === null || interval === undefined) return;
  into.of += 1;
  if (truth >= interval.low && truth <= interval.high) into.held += 1;
}

function widthOf({ low, high }: Estimate): number {
  return high - low;
}

/** `95.2 % of 500`. */
export function printed({ held, of }: Count): string {
  return `${((100 * held) / of).toFixed(1)} % of ${of}`;
}
