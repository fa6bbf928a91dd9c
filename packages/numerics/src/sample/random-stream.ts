import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { normalQuantile } from '../distributions/normal-quantile.ts';
import { requireRange } from '../refuse/require-range.ts';
import { randomGenerator } from './random-generator.ts';

/** A repeatable source of random numbers. It changes as it is read: hand each reader its own. */
export interface RandomStream {
  /** @returns a number from 0 (included) to 1 (excluded), multiples of 2^-53 */
  readonly uniform: () => number;
  /** @returns a standard normal number (mean 0, standard deviation 1), by inversion of one uniform */
  readonly normal: () => number;
  /** @returns an integer from 0 to count - 1, each equally likely; count up to 2^32 */
  readonly below: (count: number) => number;
  /** Puts an array into a random order in place, every order equally likely. */
  readonly shuffle: (items: { [index: number]: number; readonly length: number }) => void;
  /** @returns a stream of its own, decided by seed, path and key alone: not by how far this one was read */
  readonly child: (key: string) => RandomStream;
}

/**
 * Random numbers that are the same for the same seed and path, on every machine.
 *
 * A path names what the numbers are for ('car/mass'), so that two computations that share an input draw the same
 * numbers for it, whatever else they draw: that is what pairs them.
 *
 * Equation: xoroshiro128+ of the library pure-rand, its state set from seed and path by `streamState`
 * Valid: for sampling; not for secrets.
 *
 * @param seed - any finite number, 1
 * @param path - what the numbers are for; '' where nothing needs to be told apart
 * @returns the stream
 * @throws OutOfRangeError where the seed is not finite
 * Source: [pure-rand], [blackman-vigna-2018]
 * @example
 * randomStream(1, 'car/mass').uniform() === randomStream(1).child('car').child('mass').uniform() // => true
 */
export function randomStream(seed: number, path = ''): RandomStream {
  const generator = randomGenerator(seed, path);
  const uniform = (): number => uniformFloat64(generator);
  const below = (count: number): number =>
    uniformInt(generator, 0, requireRange('count', count, '', 1, 2 ** 32) - 1);
  return {
    uniform,
    below,
    normal: () => {
      let probability = uniform();
      while (probability === 0) probability = uniform();
      return normalQuantile(probability);
    },
    shuffle: (items) => {
      for (let i = items.length - 1; i > 0; i -= 1) {
        const j = uniformInt(generator, 0, i);
        const held = items[i]!;
        items[i] = items[j]!;
        items[j] = held;
      }
    },
    child: (key) => randomStream(seed, path === '' ? key : `${path}/${key}`),
  };
}
