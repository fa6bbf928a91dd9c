import type { SetUp } from '../../set-up/set-up.ts';
import { axleVolumes } from '../../travel/axle-volumes.ts';
import { compressedAir } from '../../travel/compressed-air.ts';
import { travelPerVolume } from '../../travel/travel-per-volume.ts';
import type { PedalReading } from './pedal-reading.ts';

/** How travel grows with air and with compliance at the readings: what is fitted. */
export interface PedalShapes {
  /** m at the pedal pad for each m³ of air at atmospheric pressure. */
  readonly air: Float64Array;
  /** m at the pedal pad for each m³/Pa of compliance of the whole system. */
  readonly compliance: Float64Array;
  /** d air / d ln x of each reading, m/m³. */
  readonly airRise: Float64Array;
  /** d compliance / d ln x of each reading, m Pa/m³. */
  readonly complianceRise: Float64Array;
}

/**
 * Answers how travel grows with trapped air and with one linear compliance, reading by reading.
 *
 * Equation: air: i_p (r_f φ(p_f) + r_r φ(p_r)) / 2 with φ = 1 − (p_a / (p_a + p))^(1/n); compliance:
 * i_p (w r_f p_f + (1 − w) r_r p_r); r by `travelPerVolume`, w the front share of the compliance by the set-up's parts.
 * Assumes: air lies half at each axle; the set-up's own parts say how the compliance is shared between the axles.
 * Valid: as `pedalTravel`.
 *
 * @param setUp - the set-up
 * @param readings - the readings with their pressures, Pa
 * @param airExponent - n, exponent of the air, 1 slow to 1.4 fast
 * @returns the shapes, m/m³ and m Pa/m³, and how they rise with the readings
 * @throws OutOfRangeError where an input cannot be
 * Source: [limpert]
 * @example
 * pedalShapes(exampleSetUp, [pedalReading(exampleSetUp, { pedalForce: 250, travel: 0.06 })], 1).air[0] // => 10171.2
 */
export function pedalShapes(
  setUp: SetUp,
  readings: readonly PedalReading[],
  airExponent: number,
): PedalShapes {
  const rod = travelPerVolume(setUp.masterCylinder);
  const share = frontShare(setUp, readings.at(-1));
  const [front, rear] = [setUp.pedal.ratio * rod.front, setUp.pedal.ratio * rod.rear];
  const shrunk = (pressure: number): number =>
    compressedAir({ volume: 1e-6, pressure, exponent: airExponent }) * 1e6;
  const shrinkRise = (pressure: number): number =>
    (shrunk(pressure + 50) - shrunk(Math.max(0, pressure - 50))) / (50 + Math.min(50, pressure));
  const of = (shape: (reading: PedalReading) => number): Float64Array => Float64Array.from(readings, shape);
  return {
    air: of((p) => 0.5 * (front * shrunk(p.front) + rear * shrunk(p.rear))),
    compliance: of((p) => share * front * p.front + (1 - share) * rear * p.rear),
    airRise: of(
      (p) => 0.5 * (front * shrinkRise(p.front) * p.frontRise + rear * shrinkRise(p.rear) * p.rearRise),
    ),
    complianceRise: of((p) => share * front * p.frontRise + (1 - share) * rear * p.rearRise),
  };
}

/** Front share of what gives under pressure, at the hardest reading. */
function frontShare({ frontBrake, rearBrake, fluid }: SetUp, hardest: PedalReading | undefined): number {
  if (hardest === undefined) return 0.5;
  const given = (brake: typeof frontBrake, pressure: number): number => {
    if (!(pressure > 0)) return 0;
    const { total, clearance, air } = axleVolumes({ brake, fluid, pressure });
    return (total - clearance - air) / pressure;
  };
  const front = given(frontBrake, hardest.front);
  const all = front + given(rearBrake, hardest.rear);
  return all > 0 ? front / all : 0.5;
}
