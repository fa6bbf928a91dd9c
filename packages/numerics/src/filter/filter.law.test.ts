import { describe, expect, test } from 'vitest';
import { leastSquares } from '../statistics/least-squares.ts';
import { randomStream } from '../sample/random-stream.ts';
import { gaussianState, type GaussianState } from './gaussian-state.ts';
import { kalmanPredictor } from './kalman-predictor.ts';
import { kalmanUpdater } from './kalman-updater.ts';
import { rtsSmoother } from './rts-smoother.ts';

const copied = ({ mean, covariance }: GaussianState): GaussianState => ({
  mean: mean.slice(),
  covariance: covariance.slice(),
});

interface Model {
  readonly transition: readonly number[];
  readonly noise: readonly number[];
  readonly row: readonly number[];
}

/** Smoothed states of a model whose readings have errors of size 1 and of which nothing is known before. */
function smoothedOf(values: readonly number[], model: Model): GaussianState[] {
  const size = model.row.length;
  const [predict, update, smooth] = [kalmanPredictor(size), kalmanUpdater(size), rtsSmoother(size)];
  const [transition, noise, row] = [model.transition, model.noise, model.row].map((list) =>
    Float64Array.from(list),
  ) as [Float64Array, Float64Array, Float64Array];
  const state = gaussianState(size);
  for (let i = 0; i < size; i += 1) state.covariance[i * size + i] = 1e8;
  const filtered: GaussianState[] = [];
  const predicted: GaussianState[] = [];
  values.forEach((value, index) => {
    if (index > 0) predict(state, { transition, noise });
    predicted.push(copied(state));
    update(state, { value, row, variance: 1 });
    filtered.push(copied(state));
  });
  for (let i = filtered.length - 2; i >= 0; i -= 1)
    smooth({ transition, filtered: filtered[i]!, predicted: predicted[i + 1]!, smoothed: filtered[i + 1]! });
  return filtered;
}

/** Two unknowns, value and slope, of which the slope wanders. */
const straightLine = (values: readonly number[], wander: number): GaussianState[] =>
  smoothedOf(values, { transition: [1, 1, 0, 1], noise: [0, 0, 0, wander], row: [1, 0] });
const wanderingLevel = (values: readonly number[]): GaussianState[] =>
  smoothedOf(values, { transition: [1], noise: [0.4], row: [1] });

describe('the filter and the smoother', () => {
  const random = randomStream(7);
  const values = Array.from({ length: 25 }, (_, i) => 3 + 0.4 * i + random.normal());

  test('give the least squares line where nothing wanders', () => {
    const smoothed = straightLine(values, 0);
    const line = leastSquares([values.map(() => 1), values.map((_, i) => i)], values);
    smoothed.forEach(({ mean }, i) => {
      expect(mean[0]).toBeCloseTo(line.coefficients[0]! + line.coefficients[1]! * i, 5);
      expect(mean[1]).toBeCloseTo(line.coefficients[1]!, 5);
    });
    const meanTime = 12;
    const squares = values.reduce((sum, _, i) => sum + (i - meanTime) ** 2, 0);
    smoothed.forEach(({ covariance }, i) =>
      expect(covariance[0]).toBeCloseTo(1 / 25 + (i - meanTime) ** 2 / squares, 5),
    );
  });

  test('say the same of a wandering level when its readings run backward', () => {
    const forward = wanderingLevel(values);
    const backward = wanderingLevel([...values].reverse()).reverse();
    forward.forEach(({ mean, covariance }, i) => {
      expect(mean[0]).toBeCloseTo(backward[i]!.mean[0]!, 6);
      expect(covariance[0]).toBeCloseTo(backward[i]!.covariance[0]!, 6);
    });
  });

  test('hindsight is never less sure than the filter, and covariances stay symmetric', () => {
    const smoothed = straightLine(values, 0.3);
    const last = smoothed[smoothed.length - 1]!;
    for (const { covariance } of smoothed) {
      expect(covariance[1]).toBe(covariance[2]);
      expect(covariance[0]).toBeLessThanOrEqual(last.covariance[0]! * (1 + 1e-9));
      expect(covariance[0]! * covariance[3]! - covariance[1]! * covariance[2]!).toBeGreaterThan(0);
    }
  });

  test('a reading a billion times sharper than the belief leaves a covariance that is one', () => {
    const update = kalmanUpdater(2);
    const state = gaussianState(2);
    state.covariance.set([1e9, 9e8, 9e8, 1e9]);
    update(state, { value: 1, row: Float64Array.of(1, 0), variance: 1e-9 });
    update(state, { value: 2, row: Float64Array.of(1, 1), variance: 1e-9 });
    expect(state.covariance[0]).toBeGreaterThan(0);
    expect(state.covariance[3]).toBeGreaterThan(0);
    expect(state.mean[0]).toBeCloseTo(1, 6);
    expect(state.mean[1]).toBeCloseTo(1, 6);
  });

  test('what is exactly known stays so, and is no trouble on the way back', () => {
    const smooth = rtsSmoother(2);
    const state = (spread: number): GaussianState => ({
      mean: Float64Array.of(1, 5),
      covariance: Float64Array.of(spread, 0, 0, 0),
    });
    const filtered = state(2);
    const smoothed = { mean: Float64Array.of(4, 5), covariance: Float64Array.of(1, 0, 0, 0) };
    smooth({ transition: Float64Array.of(1, 0, 0, 1), filtered, predicted: state(4), smoothed });
    expect([...filtered.mean]).toEqual([2.5, 5]);
    expect([...filtered.covariance]).toEqual([1.25, 0, 0, 0]);
    expect(() => gaussianState(0)).toThrow('number of unknowns');
  });
});
