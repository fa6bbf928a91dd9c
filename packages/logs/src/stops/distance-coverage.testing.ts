import { quantile, randomStream } from '@standstill/numerics';
import { expect } from 'vitest';
import { madeStop } from '../simulate/made-stop.testing.ts';
import { recordedTable } from '../simulate/recorded-table.ts';
import { sensorModel, type Sensor } from '../simulate/sensor-model.ts';
import { findStops } from './find-stops.ts';

export interface CoverageInput {
  /** Hz. */
  readonly rate: number;
  readonly startBy: 'any' | 'deceleration-onset';
  readonly draws: number;
}

const receiver: Omit<Sensor, 'rate'> = {
  noise: 0.03,
  correlatedNoise: 0.03,
  correlationTime: 0.3,
  resolution: 0.01,
};

/** Share of made stops whose true distance lies in the stated 95 % interval; prints it with the width and the errors. */
export function distanceCoverage({ rate, startBy, draws }: CoverageInput): number {
  const errors: number[] = [];
  const widths: number[] = [];
  let covered = 0;
  for (let draw = 0; draw < draws; draw += 1) {
    const random = randomStream(20_261, `${rate}/${startBy}/${draw}`);
    const made = madeStop(random);
    const filterTime = 0.08 * random.uniform();
    // The whole delay of the speed, filter included, is what the stated 0 ± 0.05 s speaks of.
    const latency = 0.05 * random.normal() - filterTime;
    const recorded = sensorModel(made.trace, { ...receiver, rate, filterTime, latency }, random);
    const found = findStops(recordedTable(recorded, 'made'), { startBy });
    expect(found).toHaveLength(1);
    const [stop] = found;
    const error = stop!.applicationDistance - (startBy === 'any' ? made.fromSwitch : made.fromOnset);
    errors.push(error);
    widths.push(1.96 * stop!.distanceStandardError);
    if (Math.abs(error) <= 1.96 * stop!.distanceStandardError) covered += 1;
  }
  print({ rate, startBy, draws }, covered / draws, errors, widths);
  return covered / draws;
}

function print(
  { rate, startBy, draws }: CoverageInput,
  covered: number,
  errors: readonly number[],
  widths: readonly number[],
): void {
  const rms = Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / draws);
  const mean = errors.reduce((sum, error) => sum + error, 0) / draws;
  const by = startBy === 'any' ? 'the switch' : 'the onset of deceleration';
  console.info(
    `${rate} Hz, from ${by}: covered ${(100 * covered).toFixed(1)} %, median ±${quantile(widths, 0.5).toFixed(2)} m, error mean ${mean.toFixed(2)} m, rms ${rms.toFixed(2)} m`,
  );
}
