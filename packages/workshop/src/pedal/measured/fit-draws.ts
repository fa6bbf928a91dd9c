import { fitPedal, pedalTravel } from '@standstill/braking';
import type { PedalFit, SetUp } from '@standstill/braking';
import { randomStream } from '@standstill/numerics';
import { orNone } from '../../draws/or-none.ts';
import { intervalOf } from '../../draws/interval-of.ts';
import type { JobPedalTest } from '../../job/job.ts';
import type { Estimate } from '../../results/estimate.ts';
import { inStateOf, usablePoints } from './usable-points.ts';
import type { UsablePoint } from './usable-points.ts';

/** One standard deviation of the gauges. */
export interface GaugeSpread {
  /** m. */
  readonly travel: number;
  /** Share of a force or pressure, 1. */
  readonly force: number;
}

export interface FitDrawsInput {
  readonly test: JobPedalTest;
  readonly central: SetUp;
  readonly draws: readonly (SetUp | null)[];
  readonly gauge: GaugeSpread;
  readonly seed: number;
}

/** What the points say, and what the parts would have made of the same pushes. */
export interface FitDraws {
  readonly fit: PedalFit;
  readonly points: readonly UsablePoint[];
  readonly measured: Three;
  readonly expected: Three;
}

interface Three {
  readonly offset: Estimate;
  readonly air: Estimate;
  readonly compliance: Estimate;
}

const names = ['offset', 'air', 'compliance'] as const;

/**
 * Answers offset, air and compliance of a measured pedal with all that is not known: the gauges' spread by the fit, the
 * pressures behind the forces by the draws of the set-up.
 *
 * @param input - test; set-up and its draws; spread of the gauges; seed
 * @returns the fit of the central set-up, and the three with their intervals
 * @throws OutOfRangeError where the points can't tell the three apart at all
 */
export function fitDraws({ test, central, draws, gauge, seed }: FitDrawsInput): FitDraws {
  const points = usablePoints(inStateOf(central, test.engine), test.points);
  const fit = fitted(central, test, gauge, points);
  const ours = expectedFit(central, test, gauge, points);
  const [measured, expected] = [columns(draws.length), columns(draws.length)];
  const stream = randomStream(seed, 'measured pedal');
  draws.forEach((setUp, row) => {
    const noise = names.map(() => stream.normal());
    if (setUp === null) return;
    const drawn = orNone(() => fitted(setUp, test, gauge, points));
    const wanted = orNone(() => expectedFit(setUp, test, gauge, points));
    names.forEach((name, index) => {
      const { value, spread } = drawn?.[name] ?? { value: NaN, spread: NaN };
      const sum = value + spread * (noise[index] ?? 0);
      measured[name][row] = name === 'offset' ? sum : Math.max(0, sum);
      expected[name][row] = wanted?.[name].value ?? NaN;
    });
  });
  const estimate = (name: (typeof names)[number]): Estimate => {
    const { value, low, high } = intervalOf(fit[name].value, measured[name]);
    // Never narrower than what the points alone leave open.
    return { value, low: Math.min(low, fit[name].low), high: Math.max(high, fit[name].high) };
  };
  return {
    fit,
    points,
    measured: { offset: estimate('offset'), air: estimate('air'), compliance: estimate('compliance') },
    expected: {
      offset: intervalOf(ours.offset.value, expected.offset),
      air: intervalOf(ours.air.value, expected.air),
      compliance: intervalOf(ours.compliance.value, expected.compliance),
    },
  };
}

function columns(length: number): Readonly<Record<(typeof names)[number], Float64Array>> {
  const column = (): Float64Array => new Float64Array(length).fill(NaN);
  return { offset: column(), air: column(), compliance: column() };
}

/** The pushes that the central set-up finds usable, so that every draw fits the same ones. */
function fitted(
  setUp: SetUp,
  { engine, points }: JobPedalTest,
  gauge: GaugeSpread,
  chosen: readonly UsablePoint[],
): PedalFit {
  const state = inStateOf(setUp, engine);
  const readings = usablePoints(state, points)
    .filter((_, index) => isOpen(chosen[index]))
    .map(({ reading }) => reading);
  return fitPedal({ setUp: state, readings, travelSpread: gauge.travel, forceSpread: gauge.force });
}

/** The same fit to what the parts of the job would have done at the same pushes. */
function expectedFit(
  setUp: SetUp,
  { engine, points }: JobPedalTest,
  gauge: GaugeSpread,
  chosen: readonly UsablePoint[],
): PedalFit {
  const state = inStateOf(setUp, engine);
  const readings = usablePoints(state, points)
    .filter((_, index) => isOpen(chosen[index]))
    .map(({ reading }) => ({
      ...reading,
      travel: pedalTravel({ setUp: state, pedalForce: reading.pedalForce }).travel,
    }));
  return fitPedal({ setUp: state, readings, travelSpread: gauge.travel, forceSpread: gauge.force });
}

function isOpen(point: UsablePoint | undefined): boolean {
  return point !== undefined && point.used && point.point.plugged.length === 0;
}
