import { requireRange } from '@standstill/numerics';
import { linePressures } from '../../foot-to-pressure/line-pressures.ts';
import { masterCylinderGains } from '../../foot-to-pressure/master-cylinder-gains.ts';
import { pedalForceFor } from '../../foot-to-pressure/pedal-force-for.ts';
import {
  pressuresFromMasterForce,
  type AxlePressures,
} from '../../foot-to-pressure/pressures-from-master-force.ts';
import type { SetUp } from '../../set-up/set-up.ts';

/** One held push as it was read: a force at the pedal pad or a front line pressure, and the travel. */
export type PedalMeasurement = {
  /** m at the pedal pad, from rest. */
  readonly travel: number;
} & (
  | {
      /** N at the pedal pad. */
      readonly pedalForce: number;
    }
  | {
      /** Pa, gauge in the front line. */
      readonly frontPressure: number;
    }
);

/** The same push with the pressures that it made. */
export interface PedalReading extends AxlePressures {
  /** s, m at the pedal pad. */
  readonly travel: number;
  /** F_p, N at the pedal pad. */
  readonly pedalForce: number;
  /** dp / d ln x, Pa, of the front pressure by what was read (force or pressure). */
  readonly frontRise: number;
  /** dp / d ln x, Pa, of the rear pressure. */
  readonly rearRise: number;
}

/** Share either side at which the rise is taken. */
const step = 1e-3;

/**
 * Answers which pressures a measured push made, by the state of the booster that it was measured in.
 *
 * Equation: `linePressures` of the force; or the master force behind a front pressure, and the rear pressure from it.
 * Assumes: a slow push that is held; the set-up's booster is in the state of the test (`assistLost` for a vacuum used up).
 * Valid: force above 0 to 5000 N, pressure up to 60 MPa, travel 0 to 0.5 m.
 *
 * @param setUp - the set-up in the state of the test
 * @param measured - travel, m, and force, N, or front line pressure, Pa
 * @returns travel, m; force, N; pressures, Pa, and how they rise with the reading, Pa
 * @throws OutOfRangeError where an input cannot be
 * Source: [gillespie]
 * @example
 * pedalReading(exampleSetUp, { pedalForce: 250, travel: 0.06 }).front // => 8664350
 */
export function pedalReading(setUp: SetUp, measured: PedalMeasurement): PedalReading {
  requireRange('measured pedal travel', measured.travel, 'm', 0, 0.5);
  const read = (factor: number): AxlePressures =>
    'pedalForce' in measured
      ? linePressures({ setUp, pedalForce: factor * measured.pedalForce })
      : behind(setUp, factor * measured.frontPressure);
  const { front, rear } = read(1);
  const [low, high] = [read(1 - step), read(1 + step)];
  return {
    travel: measured.travel,
    pedalForce:
      'pedalForce' in measured
        ? requireRange('measured pedal force', measured.pedalForce, 'N', 1e-3, 5000)
        : pedalForceFor({ setUp, frontPressure: measured.frontPressure }),
    front,
    rear,
    frontRise: (high.front - low.front) / (2 * step),
    rearRise: (high.rear - low.rear) / (2 * step),
  };
}

function behind({ masterCylinder, rearValve }: SetUp, frontPressure: number): AxlePressures {
  const pressure = requireRange('measured line pressure', frontPressure, 'Pa', 0, 60e6);
  const masterForce = pressure / masterCylinderGains(masterCylinder).front;
  return pressuresFromMasterForce({ masterCylinder, rearValve, masterForce });
}
