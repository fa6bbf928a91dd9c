import type { PadTemperatures } from '@standstill/braking';
import { rowOf } from '../predict/evaluate.ts';
import { leastFrontBias, padMoments } from '../predict/lock-looks.ts';
import type { Settled } from '../settle/settle.ts';

/** °C: the moment of the repeated stops at which the front pads have faded most against the rear ones; null where none is driven. */
export function hottestPads(settled: Settled, count: number): PadTemperatures | null {
  return leastFrontBias(settled, padMoments(rowOf(settled, count)));
}
