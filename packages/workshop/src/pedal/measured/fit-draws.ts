import { fitPedal, pedalShapes, pedalTravel } from '@standstill/braking';
import type { Fitted, PedalFit, PedalReading, SetUp } from '@standstill/braking';
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

/** What the points say, and what the parts of the job have. */
export interface FitDraws {
  readonly fit: PedalFit;
  readonly points: readonly UsablePoint[];
  readonly measured: Three<Estimate>;
  readonly expected: Three<Estimate>;
  /** What the same fit makes of the parts' own travel, less what they have: the error of taking them for a straight line. */
  readonly bias: Three<number>;
}

const names = ['offset', 'air', 'compliance'] as const;
/** Offset, m; air, m³; compliance, m³/Pa. */
type Three<T> = Readonly<Record<(typeof names)[number], T>>;

/**
 * Answers offset, air and compliance of a measured pedal with all that is not known: the gauges' spread by the fit, the
 * pressures behind the forces by the draws of the set-up, and the error of the straight line by a fit to the parts' own
 * travel at the same pushes.
 *
 * @param input - test; set-up and its draws; spread of the gauges; seed
 * @returns the fit of the central set-up, and the three with their intervals
 * @throws OutOfRangeError where the points can't tell the three apart at all
 */
export function fitDraws({ test, central, draws, gauge, seed }: FitDrawsInput): FitDraws {
  const points = usablePoints(inStateOf(central, test.engine), test.points);
  const fit = fitted(central, test, gauge, points);
  const bias = biasOf(central, test, gauge, points);
  const [measured, expected] = [columns(draws.length), columns(draws.length)];
  const stream = randomStream(seed, 'measured pedal');
  draws.forEach((setUp, row) => {
    const noise = names.map(() => stream.normal());
    if (setUp === null) return;
    const drawn = orNone(() => fitted(setUp, test, gauge, points));
    const wanted = orNone(() => ofParts(setUp, test, points));
    names.forEach((name, index) => {
      const { value, spread } = drawn?.[name] ?? { value: NaN, spread: NaN };
      const sum = value + spread * (noise[index] ?? 0);
      measured[name][row] = name === 'offset' ? sum : Math.max(0, sum);
      expected[name][row] = wanted?.[name] ?? NaN;
    });
  });
  const middle = ofParts(central, test, points);
  return {
    fit,
    points,
    measured: each((name) =>
      widened(fit[name], intervalOf(fit[name].value, measured[name]), bias[name], name),
    ),
    expected: each((name) => intervalOf(middle[name], expected[name])),
    bias,
  };
}

function each<T>(of: (name: (typeof names)[number]) => T): Three<T> {
  return { offset: of('offset'), air: of('air'), compliance: of('compliance') };
}

/** Never narrower than what the points alone leave open, and open to where the straight line may have pushed the fit from. */
function widened(
  { value, low, high }: Fitted,
  drawn: Estimate,
  bias: number,
  name: (typeof names)[number],
): Estimate {
  const least = Math.min(low, drawn.low) - Math.max(0, bias);
  return {
    value,
    low: name === 'offset' ? least : Math.max(0, least),
    high: Math.max(high, drawn.high) + Math.max(0, -bias),
  };
}

/** What the parts have, with the compliance as the secant to the hardest push. */
function ofParts(
  setUp: SetUp,
  { engine, points }: JobPedalTest,
  chosen: readonly UsablePoint[],
): Three<number> {
  const state = inStateOf(setUp, engine);
  const readings = openReadings(state, points, chosen);
  const hardest = readings.reduce((most, one) => (one.pedalForce > most.pedalForce ? one : most));
  const { travel, parts } = pedalTravel({ setUp: state, pedalForce: hardest.pedalForce });
  const { freePlay, flex, clearance, air } = parts;
  const [shape = NaN] = pedalShapes(state, [hardest], 1).compliance;
  return {
    offset: freePlay + clearance,
    air: state.fluid.trappedAir,
    compliance: (travel - freePlay - flex - clearance - air) / shape,
  };
}

/** The fit to what the parts would have done at the same pushes, less what they have. */
function biasOf(
  setUp: SetUp,
  test: JobPedalTest,
  gauge: GaugeSpread,
  chosen: readonly UsablePoint[],
): Three<number> {
  const state = inStateOf(setUp, test.engine);
  const readings = openReadings(state, test.points, chosen).map((reading) => ({
    ...reading,
    travel: pedalTravel({ setUp: state, pedalForce: reading.pedalForce }).travel,
  }));
  const fit = fitPedal({ setUp: state, readings, travelSpread: gauge.travel, forceSpread: gauge.force });
  const has = ofParts(setUp, test, chosen);
  return each((name) => fit[name].value - has[name]);
}

function columns(length: number): Readonly<Record<(typeof names)[number], Float64Array>> {
  const column = (): Float64Array => new Float64Array(length).fill(NaN);
  return { offset: column(), air: column(), compliance: column() };
}

/** The pushes that the central set-up finds usable, so that every draw fits the same ones. */
function openReadings(
  state: SetUp,
  points: JobPedalTest['points'],
  chosen: readonly UsablePoint[],
): readonly PedalReading[] {
  return usablePoints(state, points)
    .filter((_, index) => chosen[index]?.used === true && chosen[index].point.plugged.length === 0)
    .map(({ reading }) => reading);
}

function fitted(
  setUp: SetUp,
  { engine, points }: JobPedalTest,
  gauge: GaugeSpread,
  chosen: readonly UsablePoint[],
): PedalFit {
  const state = inStateOf(setUp, engine);
  const readings = openReadings(state, points, chosen);
  return fitPedal({ setUp: state, readings, travelSpread: gauge.travel, forceSpread: gauge.force });
}
