import fc from 'fast-check';
import { det as determinant, inv, multiply, transpose } from 'mathjs';
import { linearRegression } from 'simple-statistics';
import { expect, test } from 'vitest';
import { groupLeastSquares } from './group-least-squares.ts';
import { leastSquares } from './least-squares.ts';
import { leastSquaresWeights } from './least-squares-weights.ts';
import { summarize } from './summarize.ts';
import { welch } from './welch.ts';

const values = fc.array(fc.double({ min: -100, max: 100, noNaN: true }), { minLength: 3, maxLength: 8 });

test('a constant and a step between two groups are the test of Welch', () => {
  fc.assert(
    fc.property(values, values, (first, second) => {
      const [one, other] = [summarize(first), summarize(second)];
      fc.pre(one.standardDeviation > 1e-3 && other.standardDeviation > 1e-3);
      const groups = [...first.map(() => 0), ...second.map(() => 1)];
      const found = groupLeastSquares([groups.map(() => 1), groups], [...first, ...second], groups);
      const expected = welch(other, one);
      const step = found.terms[1]!;
      expect(step.value).toBeCloseTo(expected.difference, 9);
      expect(step.standardError / expected.standardError).toBeCloseTo(1, 9);
      expect(step.degreesOfFreedom / expected.degreesOfFreedom).toBeCloseTo(1, 9);
      expect(found.standardDeviations[0]! / one.standardDeviation).toBeCloseTo(1, 9);
    }),
    { seed: 31, numRuns: 200 },
  );
});

test('one group alone is the plain fit, and its line that of a general-purpose package', () => {
  fc.assert(
    fc.property(values, (ys) => {
      const xs = ys.map((_, index) => index);
      const columns = [ys.map(() => 1), xs];
      const found = groupLeastSquares(
        columns,
        ys,
        ys.map(() => 0),
      );
      const plain = leastSquares(columns, ys);
      found.terms.forEach(({ value, standardError, degreesOfFreedom }, j) => {
        expect(value).toBeCloseTo(plain.coefficients[j]!, 9);
        expect(standardError).toBeCloseTo(plain.standardErrors[j]!, 9);
        expect(degreesOfFreedom).toBeCloseTo(ys.length - 2, 9);
      });
      expect(found.terms[1]!.value).toBeCloseTo(linearRegression(ys.map((y, x) => [x, y])).m, 8);
    }),
    { seed: 32, numRuns: 200 },
  );
});

test('the weights of the values add up to what the fit finds', () => {
  fc.assert(
    fc.property(values, (ys) => {
      const columns = [ys.map(() => 1), ys.map((_, index) => index ** 2)];
      const weights = leastSquaresWeights(columns);
      const { coefficients } = leastSquares(columns, ys);
      weights.forEach((weight, j) =>
        expect(weight.reduce((sum, each, i) => sum + each * ys[i]!, 0)).toBeCloseTo(coefficients[j]!, 9),
      );
    }),
    { seed: 33, numRuns: 200 },
  );
});

test('the weights are those of the normal equations, solved by a general-purpose package', () => {
  const size = fc.double({ min: -3, max: 3, noNaN: true });
  fc.assert(
    fc.property(fc.array(fc.tuple(size, size), { minLength: 6, maxLength: 9 }), (rows) => {
      const matrix = rows.map(([x, y], i) => [1, x + (i % 3), y - (i % 2) * 2]);
      const square = multiply(transpose(matrix), matrix);
      fc.pre(Math.abs(determinant(square)) > 1e-2);
      const expected = multiply(inv(square), transpose(matrix));
      const columns = [0, 1, 2].map((column) => matrix.map((row) => row[column]!));
      leastSquaresWeights(columns).forEach((weight, j) =>
        weight.forEach((each, i) => expect(each).toBeCloseTo(expected[j]![i]!, 8)),
      );
    }),
    { seed: 34, numRuns: 200 },
  );
});

test('a group that the fit takes up whole is refused', () => {
  const ones = [1, 1, 1, 1, 1];
  expect(() => groupLeastSquares([ones, [0, 0, 0, 0, 1]], [1, 2, 3, 4, 5], [0, 0, 0, 0, 1])).toThrow(
    'rows that a group has to spare',
  );
  expect(() => groupLeastSquares([ones], [1, 2, 3, 4, 5], [0, 1])).toThrow('number of groups');
});
