import { kalmanUpdater, type GaussianState, type Innovation, type Reading } from '@standstill/numerics';
import { accelerationAt, distanceAt, speedAt, type MotionLayout } from './motion-step.ts';
import type { SmootherSteps } from './smoother-steps.ts';
import type { StopSensors } from './stop-sensors.ts';

/** Where the readings are linearized, and by what their variances are too small. */
export interface Linearization {
  /** s. */
  readonly latency: number;
  readonly pitch: number;
  readonly speedScale: number;
  readonly accelerationScale: number;
}

/** Sums of squared innovations over their variances, and how many. */
export interface Misfit {
  speed: number;
  speeds: number;
  acceleration: number;
  accelerations: number;
}

export interface ReadingContext {
  readonly steps: SmootherSteps;
  readonly sensors: StopSensors;
  readonly at: Linearization;
  readonly misfit: Misfit;
}

/** m/s², by how much a body rocks when the car comes to rest, and for how many s. Common practice. */
const rocking = { size: 1, lasts: 1 };
/** m/s and m/s²: a car that stands, stands. */
const standing = { speed: 0.01, acceleration: 0.05 };

/** Takes the readings of one kind into a belief. */
type Taker = (state: GaussianState, context: ReadingContext, step: number) => void;

/**
 * Makes what takes all readings of a step into the filter's belief.
 *
 * Equation: accelerometer z = a (1 + κ) + b; speed z = v + a (o - δ) + g; position z = s + v (o - δ) + p; wheel z = v;
 * o from the step to the reading. Products of two unknowns are linear about the first pass's δ and κ and the measured a.
 *
 * @param layout - which unknowns there are
 * @returns takes readings in SI
 */
export function readingsOfStep(layout: MotionLayout): Taker {
  const update = kalmanUpdater(layout.size);
  const reading: Reading = { value: 0, variance: 0, row: new Float64Array(layout.size) };
  const takers = [takeAcceleration, takeSpeeds, takePlace, takeWheel, takeStanding].map((make) =>
    make(layout, reading, update),
  );
  return (state, context, step) => {
    for (const take of takers) take(state, context, step);
  };
}

type Update = (state: GaussianState, reading: Reading) => Innovation;

function takeAcceleration(layout: MotionLayout, reading: Reading, update: Update): Taker {
  const { row } = reading;
  return (state, { steps, sensors, at, misfit }, step) => {
    const felt = steps.acceleration[step]!;
    if (layout.bias < 0 || Number.isNaN(felt)) return;
    const now = steps.time[step]!;
    const about = steps.about[step]!;
    row.fill(0);
    row[accelerationAt] = 1 + at.pitch;
    row[layout.pitch] = about;
    row[layout.bias] = 1;
    const rocks = now > sensors.rest.from && now < sensors.rest.to + rocking.lasts;
    reading.value = felt + about * at.pitch;
    reading.variance = sensors.acceleration!.noise ** 2 * at.accelerationScale;
    if (rocks) reading.variance += rocking.size ** 2;
    const { difference, variance } = update(state, reading);
    if (rocks) return;
    misfit.acceleration += (difference * difference) / variance;
    misfit.accelerations += 1;
  };
}

function takeSpeeds(layout: MotionLayout, reading: Reading, update: Update): Taker {
  const { row } = reading;
  return (state, { steps, sensors: { speed }, at, misfit }, step) => {
    const now = steps.time[step]!;
    for (let i = steps.firstSpeed[step]!; i < steps.firstSpeed[step + 1]!; i += 1) {
      row.fill(0);
      row[speedAt] = 1;
      row[layout.wander] = 1;
      row[accelerationAt] = speed.time[i]! - now - at.latency;
      reading.value = speed.values[i]!;
      reading.variance = speed.noise ** 2 * at.speedScale;
      if (layout.latency >= 0) {
        row[layout.latency] = -steps.about[step]!;
        reading.value -= steps.about[step]! * at.latency;
      }
      const { difference, variance } = update(state, reading);
      misfit.speed += (difference * difference) / variance;
      misfit.speeds += 1;
    }
  };
}

function takePlace(layout: MotionLayout, reading: Reading, update: Update): Taker {
  const { row } = reading;
  return (state, { steps, sensors: { position }, at }, step) => {
    const index = steps.place[step]!;
    if (layout.place < 0 || position === null || index < 0) return;
    const speed = state.mean[speedAt]!;
    row.fill(0);
    row[distanceAt] = 1;
    row[layout.place] = 1;
    row[speedAt] = position.time[index]! - steps.time[step]! - at.latency;
    reading.value = position.values[index]!;
    reading.variance = position.noise ** 2;
    if (layout.latency >= 0) {
      row[layout.latency] = -speed;
      reading.value -= speed * at.latency;
    }
    update(state, reading);
  };
}

function takeWheel(_: MotionLayout, reading: Reading, update: Update): Taker {
  return (state, { steps, sensors: { wheels } }, step) => {
    const value = steps.wheel[step]!;
    if (wheels === null || Number.isNaN(value)) return;
    reading.row.fill(0);
    reading.row[speedAt] = 1;
    reading.value = value;
    reading.variance = wheels.noise ** 2;
    update(state, reading);
  };
}

function takeStanding(_: MotionLayout, reading: Reading, update: Update): Taker {
  return (state, { steps, sensors: { rest } }, step) => {
    if (!(steps.time[step]! > rest.to)) return;
    for (const [place, size] of [
      [speedAt, standing.speed],
      [accelerationAt, standing.acceleration],
    ] as const) {
      reading.row.fill(0);
      reading.row[place] = 1;
      reading.value = 0;
      reading.variance = size * size;
      update(state, reading);
    }
  };
}
