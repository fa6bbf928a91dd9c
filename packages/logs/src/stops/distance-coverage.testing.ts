import { quantile, randomStream } from '@standstill/numerics';
import { expect } from 'vitest';
import type { Accelerometer } from '../simulate/accelerometer.ts';
import { madeStop } from '../simulate/made-stop.testing.ts';
import { recordedTable } from '../simulate/recorded-table.ts';
import { sensorModel, type Sensor } from '../simulate/sensor-model.ts';
import { findStops } from './find-stops.ts';

export interface CoverageInput {
  /** Hz, of the speed. */
  readonly rate: 1 | 5 | 10 | 25 | 100;
  readonly startBy: 'any' | 'deceleration-onset';
  readonly sensors: 'speed' | 'speed and accelerometer';
  readonly draws: number;
}

export interface Coverage {
  /** Share of made stops whose true distance lies in the stated 95 % interval. */
  readonly covered: number;
  /** m, median of the intervals' half widths. */
  readonly halfWidth: number;
  /** Made stops that were not found, as where a dropout swallows the start. */
  readonly missed: number;
}

/** m, greatest median half width that is let pass: by sensors and start, at 1, 5, 10, 25 and 100 Hz. */
const widths = {
  'speed any': [14.5, 4.5, 3.2, 2.9, 2.8],
  'speed deceleration-onset': [6.5, 2.9, 2.4, 2.2, 2.1],
  'speed and accelerometer any': [3.6, 3, 2.9, 2.9, 2.9],
  'speed and accelerometer deceleration-onset': [2.4, 1.1, 1, 1, 1],
} as const;

/** m, what the median half width of a case may be at most. */
export function widest({ sensors, startBy, rate }: CoverageInput): number {
  return widths[`${sensors} ${startBy}`][[1, 5, 10, 25, 100].indexOf(rate)] ?? 0;
}

const receiver: Omit<Sensor, 'rate'> = {
  noise: 0.03,
  correlatedNoise: 0.03,
  correlationTime: 0.3,
  resolution: 0.01,
  dropoutChance: 0.003,
};

/** Makes stops, records them, finds them again and holds the truth against the stated intervals; prints what came out. */
export function distanceCoverage(input: CoverageInput): Coverage {
  const { rate, startBy, sensors, draws } = input;
  const errors: number[] = [];
  const halfWidths: number[] = [];
  let covered = 0;
  for (let draw = 0; draw < draws; draw += 1) {
    const random = randomStream(20_261, `${rate}/${startBy}/${draw}`);
    const made = madeStop(random);
    const filterTime = 0.08 * random.uniform();
    // The whole delay of the speed, filter included, is what the stated 0 ± 0.05 s speaks of.
    const latency = 0.05 * random.normal() - filterTime;
    const accelerometer: Accelerometer = {
      rate: 100,
      noise: 0.1 + 0.4 * random.uniform(),
      tilt: 0.03 * random.normal(),
      bias: 0.1 * random.normal(),
      pitch: 0.002 + 0.003 * random.uniform(),
      pitchRate: 1.2 + 0.8 * random.uniform(),
      pitchDamping: 0.25 + 0.3 * random.uniform(),
      resolution: 0.02,
      latency: 0.05 * random.normal(),
    };
    const sensor = { ...receiver, rate, filterTime, latency };
    const recorded = sensorModel(
      made.trace,
      sensors === 'speed' ? sensor : { ...sensor, accelerometer },
      random,
    );
    const found = findStops(recordedTable(recorded, 'made'), { startBy });
    expect(found.length).toBeLessThanOrEqual(1);
    const [stop] = found;
    if (stop === undefined) continue;
    const error = stop.applicationDistance - (startBy === 'any' ? made.fromSwitch : made.fromOnset);
    errors.push(error);
    halfWidths.push(1.96 * stop.distanceStandardError);
    if (Math.abs(error) <= 1.96 * stop.distanceStandardError) covered += 1;
  }
  const halfWidth = quantile(halfWidths, 0.5);
  print(input, covered / errors.length, halfWidth, errors);
  return { covered: covered / errors.length, halfWidth, missed: draws - errors.length };
}

function print(
  { rate, startBy, sensors }: CoverageInput,
  covered: number,
  halfWidth: number,
  errors: readonly number[],
): void {
  const rms = Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / errors.length);
  const mean = errors.reduce((sum, error) => sum + error, 0) / errors.length;
  const by = startBy === 'any' ? 'the switch' : 'the onset of deceleration';
  console.info(
    `${rate} Hz, ${sensors}, from ${by}: covered ${(100 * covered).toFixed(1)} %, median ±${halfWidth.toFixed(2)} m, error mean ${mean.toFixed(2)} m, rms ${rms.toFixed(2)} m`,
  );
}
