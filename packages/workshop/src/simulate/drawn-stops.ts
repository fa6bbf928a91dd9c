import { fullStop, fullStopWorkspace } from '@standstill/braking';
import type { FullMarch, FullStopSummary } from '@standstill/braking';
import { OutOfRangeError } from '@standstill/numerics';
import { drawSheet } from '../draws/draw-sheet.ts';
import type { DrawSampling } from '../draws/draw-sampling.ts';
import { knownsOf } from '../draws/knowns-of.ts';
import type { Job } from '../job/job.ts';
import { settle } from '../settle/settle.ts';
import type { Overrides } from '../settle/settle.ts';
import type { Draw } from '../settle/draw.ts';
import { fullInput } from './full-input.ts';
import type { SimulatedFoot } from './full-input.ts';

/** What is kept of every drawn stop. */
export const drawnFigures = [
  'distance',
  'time',
  'meanDeceleration',
  'meanFullyDevelopedDeceleration',
  'efficiency',
  'frontPeak',
  'rearPeak',
] as const;

export type DrawnFigures = Readonly<Record<(typeof drawnFigures)[number], Float64Array>>;

export interface DrawnStopsInput {
  readonly job: Job;
  readonly setUpIds: readonly string[];
  readonly overrides: Overrides;
  readonly foot: SimulatedFoot;
  readonly draws: number;
  readonly seed: number;
  readonly sampling?: DrawSampling | undefined;
}

/** The golden section's fraction: its multiples fill 0 to 1 evenly. */
const golden = (Math.sqrt(5) - 1) / 2;

/**
 * Simulated stops of all set-ups for every draw, the shared inputs drawn once for all of them. The control first looks at
 * another moment in every draw, so that the spread holds its chance too.
 *
 * @param input - job, set-ups, draws, seed
 * @returns for each set-up its figures, SI; a draw in which one of them does not stop counts for none
 */
export function drawnStops(input: DrawnStopsInput): readonly DrawnFigures[] {
  const { job, setUpIds, draws, seed, sampling } = input;
  const march = fullStopWorkspace();
  const kept = setUpIds.map(() => emptyFigures(draws));
  drawSheet({ knowns: knownsOf(job, setUpIds), draws, seed, sampling }).forEach((draw, row) => {
    const phase = (row + 0.5) * golden;
    const stops = setUpIds.map((id) => stopOf(input, id, draw, phase - Math.floor(phase), march));
    if (stops.some((stop) => stop === null)) return;
    stops.forEach((stop, index) => keep(kept[index], row, stop));
  });
  return kept;
}

function stopOf(
  { job, overrides, foot }: DrawnStopsInput,
  id: string,
  draw: Draw,
  controlPhase: number,
  march: FullMarch,
): FullStopSummary | null {
  try {
    const input = fullInput(settle(job, id, draw, overrides), foot);
    const stop = fullStop({ ...input, controlPhase }, march);
    return stop.cameToRest ? stop : null;
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}

function emptyFigures(draws: number): DrawnFigures {
  const column = (): Float64Array => new Float64Array(draws).fill(Number.NaN);
  return {
    distance: column(),
    time: column(),
    meanDeceleration: column(),
    meanFullyDevelopedDeceleration: column(),
    efficiency: column(),
    frontPeak: column(),
    rearPeak: column(),
  };
}

function keep(into: DrawnFigures | undefined, row: number, stop: FullStopSummary | null): void {
  if (into === undefined || stop === null) return;
  into.distance[row] = stop.distance;
  into.time[row] = stop.time;
  into.meanDeceleration[row] = stop.meanDeceleration;
  into.meanFullyDevelopedDeceleration[row] = stop.meanFullyDevelopedDeceleration;
  into.efficiency[row] = stop.efficiency;
  into.frontPeak[row] = stop.front.peakInterface;
  into.rearPeak[row] = stop.rear.peakInterface;
}
