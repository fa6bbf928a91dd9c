import { choleskyRoot, choleskySolve, randomStream } from '@standstill/numerics';
import type { MeanOfStops } from '../measured/mean-of-stops.ts';
import type { ResponsePlane } from './response-plane.ts';

/** Where to look for cars and days that fit the stops. */
export interface Proposal {
  /** Moves draws from the job to where the stops are met, in place. */
  readonly move: (departures: Float64Array, numbers: number, seed: number) => void;
  /** Logarithm of how much denser the moved draws lie at a place than those from the job. */
  readonly logarithm: (departures: Float64Array, place: number) => number;
}

/** The proposal is wider than what it looks for, so that no part of that goes without draws. */
const widening = 1.6;

/**
 * What the stops would teach if the model were the plane: the draws of that, and their density.
 *
 * Equation: z' = z + Hᵀ (H Hᵀ + R)⁻¹ (x̄ + e − c − H z), e ~ N(0, R); density over that of z:
 * N(x̄; c + H z', R) / N(x̄; c, H Hᵀ + R); R the widened errors of the means and of the plane
 * Assumes: departures are standard normal and independent.
 *
 * @param plane - straight-line answers of the model
 * @param means - measured means with their errors
 * @param name - of the random numbers
 * @returns how to move draws, and their density
 * Source: [golub-van-loan]
 */
export function proposalFrom(plane: ResponsePlane, means: MeanOfStops, name: string): Proposal {
  const { acting, middle, slopes, residuals } = plane;
  const [size, count] = [middle.length, acting.length];
  const errors = means.scale.map((square, at) => {
    const own = at % (size + 1) === 0 ? residuals[Math.floor(at / size)]! ** 2 : 0;
    return widening * square + own;
  });
  const errorRoot = choleskyRoot(errors, size);
  const wholeRoot = choleskyRoot(
    errors.map((square, at) => square + innerProduct(slopes, count, Math.floor(at / size), at % size)),
    size,
  );
  const off = new Float64Array(size);
  const readOff = (departures: Float64Array, place: number): void => {
    for (let j = 0; j < size; j += 1) {
      let value = means.means[j]! - middle[j]!;
      for (let k = 0; k < count; k += 1) value -= slopes[j * count + k]! * departures[place + acting[k]!]!;
      off[j] = value;
    }
  };
  const atMiddle = means.means.map((value, j) => value - middle[j]!);
  const constant =
    logDeterminant(wholeRoot, size) - logDeterminant(errorRoot, size) + 0.5 * squared(wholeRoot, atMiddle);
  return {
    logarithm: (departures, place) => {
      readOff(departures, place);
      return constant - 0.5 * squared(errorRoot, off);
    },
    move: (departures, numbers, seed) => {
      const stream = randomStream(seed, name);
      const noise = new Float64Array(size);
      for (let place = 0; place < departures.length; place += numbers) {
        readOff(departures, place);
        for (let j = 0; j < size; j += 1) noise[j] = stream.normal();
        for (let j = 0; j < size; j += 1)
          for (let k = 0; k <= j; k += 1) off[j] = off[j]! + errorRoot[j * size + k]! * noise[k]!;
        const gain = choleskySolve(wholeRoot, off);
        for (let k = 0; k < count; k += 1)
          for (let j = 0; j < size; j += 1)
            departures[place + acting[k]!] =
              departures[place + acting[k]!]! + slopes[j * count + k]! * gain[j]!;
      }
    },
  };
}

function innerProduct(slopes: Float64Array, count: number, i: number, j: number): number {
  let sum = 0;
  for (let k = 0; k < count; k += 1) sum += slopes[i * count + k]! * slopes[j * count + k]!;
  return sum;
}

/** Half the logarithm of the determinant. */
function logDeterminant(root: Float64Array, size: number): number {
  let sum = 0;
  for (let j = 0; j < size; j += 1) sum += Math.log(root[j * size + j]!);
  return sum;
}

function squared(root: Float64Array, off: Float64Array): number {
  const solved = choleskySolve(root, off);
  return off.reduce((sum, value, j) => sum + value * solved[j]!, 0);
}
