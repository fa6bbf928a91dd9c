import { linearRegression, rSquared } from 'simple-statistics';
import { expect, test } from 'vitest';
import { randomStream } from '../sample/random-stream.ts';
import { leastSquares } from './least-squares.ts';
import { linearFit } from './linear-fit.ts';

const stream = randomStream(51, 'fits');
const xs = Array.from({ length: 40 }, (_, i) => 10 + i / 3);
const ys = xs.map((x) => 3 - 0.7 * x + 0.5 * stream.normal());

test('a line is what a general-purpose library says', () => {
  const fit = linearFit(xs, ys);
  const oracle = linearRegression(xs.map((x, i) => [x, ys[i]!]));
  expect(fit.slope).toBeCloseTo(oracle.m, 10);
  expect(fit.intercept).toBeCloseTo(oracle.b, 9);
  const points = xs.map((x, i) => [x, ys[i]!]);
  expect(fit.rSquared).toBeCloseTo(
    rSquared(points, (x) => oracle.m * x + oracle.b),
    10,
  );
  expect(fit.slopeInterval.low).toBeLessThan(-0.7);
  expect(fit.slopeInterval.high).toBeGreaterThan(-0.7);
});

test('two columns, one of ones, are the line', () => {
  const fit = linearFit(xs, ys);
  const columns = leastSquares([xs.map(() => 1), xs], ys);
  expect(columns.coefficients[0]).toBeCloseTo(fit.intercept, 10);
  expect(columns.coefficients[1]).toBeCloseTo(fit.slope, 11);
  expect(columns.standardErrors[0]).toBeCloseTo(fit.interceptStandardError, 11);
  expect(columns.standardErrors[1]).toBeCloseTo(fit.slopeStandardError, 11);
  expect(columns.residualStandardDeviation).toBeCloseTo(fit.residualStandardDeviation, 11);
});

test('terms without noise come back exactly', () => {
  const cubic = leastSquares(
    [xs.map(() => 1), xs, xs.map((x) => x ** 2), xs.map((x) => x ** 3)],
    xs.map((x) => 2 - x + 0.5 * x ** 3),
  );
  [2, -1, 0, 0.5].forEach((expected, i) => expect(cubic.coefficients[i]).toBeCloseTo(expected, 7));
});

test('what cannot be fitted is refused', () => {
  expect(() => linearFit([1, 1, 1], [1, 2, 3])).toThrow('spread of x is 0');
  expect(() => linearFit([1, 2], [1, 2])).toThrow('number of points is 2');
  expect(() =>
    leastSquares(
      [
        [1, 2, 3],
        [2, 4, 6],
      ],
      [1, 2, 3],
    ),
  ).toThrow('what only column 2 holds');
  expect(() => leastSquares([[1, 2]], [1, Number.NaN])).toThrow('value is NaN');
  expect(() => leastSquares([[1, 2]], [1])).toThrow('number of rows is 1');
});
