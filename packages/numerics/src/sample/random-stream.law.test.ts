import { expect, test } from 'vitest';
import { mean } from '../statistics/mean.ts';
import { standardDeviation } from '../statistics/standard-deviation.ts';
import { normalCdf } from '../distributions/normal-cdf.ts';
import { randomStream } from './random-stream.ts';

const draws = 200_000;

/** Sum of (seen - expected)² / expected over equal cells; for 99 degrees of freedom it is over 149 once in 1000 times. */
function chiSquare(uniforms: Float64Array, cells = 100): number {
  const seen = new Float64Array(cells);
  for (const u of uniforms) seen[Math.floor(u * cells)] = seen[Math.floor(u * cells)]! + 1;
  const expected = uniforms.length / cells;
  return seen.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
}

test('uniform numbers fill their range evenly', () => {
  const stream = randomStream(1, 'uniform');
  const uniforms = Float64Array.from({ length: draws }, () => stream.uniform());
  expect(Math.min(...uniforms.subarray(0, 1000))).toBeGreaterThanOrEqual(0);
  expect(Math.max(...uniforms.subarray(0, 1000))).toBeLessThan(1);
  expect(chiSquare(uniforms)).toBeLessThan(149);
});

test('normal numbers are normal: mean, spread and every hundredth', () => {
  const stream = randomStream(2, 'normal');
  const normals = Float64Array.from({ length: draws }, () => stream.normal());
  expect(Math.abs(mean(normals))).toBeLessThan(3.3 / Math.sqrt(draws));
  expect(Math.abs(standardDeviation(normals) - 1)).toBeLessThan(3.3 / Math.sqrt(2 * draws));
  expect(chiSquare(normals.map((z) => normalCdf(z)))).toBeLessThan(149);
});

test('the first numbers of neighboring seeds and of like paths are spread evenly too', () => {
  expect(
    chiSquare(Float64Array.from({ length: 20_000 }, (_, seed) => randomStream(seed).uniform())),
  ).toBeLessThan(149);
  const paths = Float64Array.from({ length: 20_000 }, (_, i) => randomStream(5, `tire/${i}`).uniform());
  expect(chiSquare(paths)).toBeLessThan(149);
});

test('streams of like paths are not correlated', () => {
  const [one, other] = ['front', 'fronu'].map((path) => randomStream(9, path));
  let sum = 0;
  for (let i = 0; i < draws; i += 1) sum += one!.normal() * other!.normal();
  expect(Math.abs(sum / draws)).toBeLessThan(3.3 / Math.sqrt(draws));
});

test('a shuffle puts every item into every place equally often', () => {
  const stream = randomStream(4, 'shuffle');
  const places = new Float64Array(36);
  for (let round = 0; round < 36_000; round += 1) {
    const items = [0, 1, 2, 3, 4, 5];
    stream.shuffle(items);
    items.forEach((item, place) => {
      places[item * 6 + place] = places[item * 6 + place]! + 1;
    });
  }
  const chi = places.reduce((sum, count) => sum + (count - 6000) ** 2 / 6000, 0);
  expect(chi).toBeLessThan(52.6); // 25 degrees of freedom, once in 1000 times
});
