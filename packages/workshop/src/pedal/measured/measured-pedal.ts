import { pedalTravel } from '@standstill/braking';
import type { SetUp } from '@standstill/braking';
import type { UnitSystem } from '@standstill/units';
import type { JobPedalPoint, JobPedalTest } from '../../job/job.ts';
import type { MeasuredPedal } from '../../results/pedal-report.ts';
import { fitDraws } from './fit-draws.ts';
import type { GaugeSpread } from './fit-draws.ts';
import { airIsTold, cannotTellWords, measuredVerdict } from './measured-verdict.ts';
import { splitDraws } from './split-draws.ts';
import { inStateOf, requireEnough, usablePoints } from './usable-points.ts';

/** Where the test states no spread: a rule held beside the pedal, a gauge on the pad (assumed). */
const usualGauge: GaugeSpread = { travel: 0.001, force: 0.03 };

export interface MeasuredPedalInput {
  readonly test: JobPedalTest;
  readonly central: SetUp;
  readonly draws: readonly (SetUp | null)[];
  readonly seed: number;
  readonly units: UnitSystem;
}

/**
 * Answers what a measured pedal says of air and compliance, and what it can't.
 *
 * @param input - test; set-up and its draws; seed; units of the sentences
 * @returns the figures with their intervals, SI with the unit in each key
 * @throws PedalPointsError where too few points can be used
 * @throws OutOfRangeError where the points can't tell anything apart
 */
export function measuredPedal({ test, central, draws, seed, units }: MeasuredPedalInput): MeasuredPedal {
  const state = inStateOf(central, test.engine);
  requireEnough(usablePoints(state, test.points));
  const gauge = gaugeOf(test.points);
  const { fit, points, measured, expected, bias } = fitDraws({ test, central, draws, gauge, seed });
  const states = draws.map((setUp) => (setUp === null ? null : inStateOf(setUp, test.engine)));
  const { split, splitConditionNumber } = splitDraws({ setUp: state, draws: states, points, gauge });
  const figures = {
    engine: test.engine,
    points: points.map(({ point, reading, used }) => ({
      pedalForce_N: reading.pedalForce,
      frontLinePressure_Pa: reading.front,
      travel_m: reading.travel,
      expectedTravel_m: pedalTravel({ setUp: state, pedalForce: reading.pedalForce }).travel,
      plugged: [...point.plugged],
      used,
    })),
    travelSpread_m: gauge.travel,
    forceSpreadShare: gauge.force,
    offset_m: measured.offset,
    air_m3: measured.air,
    compliance_m3_Pa: measured.compliance,
    expectedOffset_m: expected.offset,
    expectedAir_m3: expected.air,
    expectedCompliance_m3_Pa: expected.compliance,
    straightLineBias_m3: bias.air,
    conditionNumber: fit.condition,
    scatter: fit.scatter,
    airTold: airIsTold(measured.air),
    split,
    splitConditionNumber,
  };
  return { ...figures, verdict: measuredVerdict(figures, units), cannotTell: cannotTellWords(figures) };
}

/** The mean of the stated spreads; the usual ones where none is stated. */
function gaugeOf(points: readonly JobPedalPoint[]): GaugeSpread {
  const travels = points.map(({ travel }) => travel.spread).filter((spread) => spread > 0);
  const forces = points
    .flatMap(({ force, linePressure }) => force ?? linePressure ?? [])
    .filter(({ spread }) => spread > 0)
    .map(({ spread, value }) => spread / value);
  return { travel: meanOf(travels) ?? usualGauge.travel, force: meanOf(forces) ?? usualGauge.force };
}

function meanOf(values: readonly number[]): number | null {
  return values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length;
}
