import { requireRange } from '../refuse/require-range.ts';

/**
 * Answers how unevenly points fill their cube: 0 would be perfect, and a smaller number gives surer means.
 *
 * Equation: squared centered L2 discrepancy,
 * (13/12)^d − 2/n Σ_i Π_j (1 + |z|/2 − z²/2) + 1/n² Σ_i Σ_k Π_j (1 + |z_ij|/2 + |z_kj|/2 − |x_ij − x_kj|/2), z = x − 1/2
 *
 * @param points - x, n × d numbers from 0 to 1, row by row
 * @param dimensions - d, 1
 * @returns squared discrepancy, 1
 * @throws OutOfRangeError where there is no whole number of points
 * Source: [hickernell-1998]
 * @example
 * centeredDiscrepancy([0.5], 1) // => 0.0833333
 */
export function centeredDiscrepancy(points: ArrayLike<number>, dimensions: number): number {
  const count = points.length / requireRange('dimensions', dimensions, '', 1, 1e6);
  requireRange('number of points', count, '', 1, 1e9);
  if (!Number.isInteger(count)) requireRange('points left over', points.length % dimensions, '', 0, 0);
  let single = 0;
  let pairs = 0;
  for (let i = 0; i < count; i += 1) {
    single += toCenter(points, i * dimensions, dimensions);
    for (let k = 0; k < i; k += 1) pairs += 2 * together(points, i * dimensions, k * dimensions, dimensions);
    pairs += together(points, i * dimensions, i * dimensions, dimensions);
  }
  return (13 / 12) ** dimensions - (2 / count) * single + pairs / (count * count);
}

function toCenter(points: ArrayLike<number>, from: number, dimensions: number): number {
  let product = 1;
  for (let j = 0; j < dimensions; j += 1) {
    const off = Math.abs(points[from + j]! - 0.5);
    product *= 1 + 0.5 * off - 0.5 * off * off;
  }
  return product;
}

function together(points: ArrayLike<number>, from: number, other: number, dimensions: number): number {
  let product = 1;
  for (let j = 0; j < dimensions; j += 1) {
    const [x, y] = [points[from + j]!, points[other + j]!];
    product *= 1 + 0.5 * (Math.abs(x - 0.5) + Math.abs(y - 0.5) - Math.abs(x - y));
  }
  return product;
}
