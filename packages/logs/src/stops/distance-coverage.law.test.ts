import { quantile, randomStream } from '@standstill/numerics';
import { describe, expect, test } from 'vitest';
import { recordedTable } from '../simulate/recorded-table.ts';
import { madeStop } from '../simulate/made-stop.testing.ts';
import { sensorModel, type Sensor } from '../simulate/sensor-model.ts';
import { findStops } from './find-stops.ts';

const draws = 400;
const receiver: Omit<Sensor, 'rate'> = {
  noise: 0.03,
  correlatedNoise: 0.03,
  correlationTime: 0.3,
  resolution: 0.01,
};

describe('made stops come back within their stated 95 % intervals', () => {
  for (const rate of [1, 5, 10, 25, 100]) {
    for (const startBy of ['any', 'deceleration-onset'] as const) {
      const by = startBy === 'any' ? 'the switch' : 'the onset of deceleration';
      test(`at ${rate} Hz from ${by}`, () => {
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
        const rms = Math.sqrt(errors.reduce((sum, error) => sum + error * error, 0) / draws);
        const mean = errors.reduce((sum, error) => sum + error, 0) / draws;
        console.info(
          `${rate} Hz, from ${by}: covered ${((100 * covered) / draws).toFixed(1)} %, median ±${quantile(widths, 0.5).toFixed(2)} m, error mean ${mean.toFixed(2)} m, rms ${rms.toFixed(2)} m`,
        );
        expect(covered / draws).toBeGreaterThanOrEqual(0.9);
      });
    }
  }
});
