import { xoroshiro128plusFromState } from 'pure-rand/generator/xoroshiro128plus';
import type { RandomGenerator } from 'pure-rand/types/RandomGenerator';
import { requireRange } from '../refuse/require-range.ts';
import { streamState } from './stream-state.ts';

/** The library's generator behind a stream, for loops that read so much of it that a call a number counts. */
export function randomGenerator(seed: number, path: string): RandomGenerator {
  requireRange('seed', seed, '', -Number.MAX_VALUE, Number.MAX_VALUE);
  return xoroshiro128plusFromState(streamState(seed, path));
}
