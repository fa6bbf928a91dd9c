import { quantile, randomStream } from '@standstill/numerics';
import { antilockEfficiency } from '../stop/antilock-efficiency.ts';
import { quickStop, stopWorkspace } from '../stop/quick-stop.ts';
import type { StopInput } from '../stop/stop-input.ts';
import { fullOf } from './any-full-stop.testing.ts';
import { drawStop, type StopKind } from './drawn-stops.testing.ts';
import { fullStop, fullStopWorkspace } from './full-stop.ts';

const fullMarch = fullStopWorkspace();
const quickMarch = stopWorkspace();

/** The same stop with an antilock of an efficiency; unchanged where it has none. */
function withEfficiency(stop: StopInput, efficiency: number): StopInput {
  const { antilock } = stop.setUp;
  if (antilock.kind === 'none') return stop;
  return { ...stop, setUp: { ...stop.setUp, antilock: { ...antilock, efficiency } } };
}

/** How much longer, 1, the quick stop is than the full one, for `count` stops of a kind drawn from a seed. */
export function quickErrors(kind: StopKind, count: number, seed: number): readonly number[] {
  return Array.from({ length: count }, (_, car) => {
    const stop = drawStop(randomStream(seed, `${kind}/${car}`), kind);
    const quick = quickStop(withEfficiency(stop, antilockEfficiency(stop.road)), quickMarch);
    return quick.distance / fullStop(fullOf(stop), fullMarch).distance - 1;
  });
}

/** The one efficiency, 1, at which half of the quick stops of a kind are too long and half too short. */
export function fittedEfficiency(kind: StopKind, count: number, seed: number): number {
  const stops = Array.from({ length: count }, (_, car) =>
    drawStop(randomStream(seed, `${kind}/${car}`), kind),
  );
  const full = stops.map((stop) => fullStop(fullOf(stop), fullMarch).distance);
  let low = 0.7;
  let high = 1;
  for (let pass = 0; pass < 14; pass += 1) {
    const middle = 0.5 * (low + high);
    const errors = stops.map(
      (stop, car) => quickStop(withEfficiency(stop, middle), quickMarch).distance / full[car]! - 1,
    );
    if (quantile(errors, 0.5) > 0) low = middle;
    else high = middle;
  }
  return 0.5 * (low + high);
}

/** Median, 95th percentile and greatest of the sizes of errors, and their median with its sign; all 1. */
export interface ErrorSizes {
  readonly median: number;
  readonly high: number;
  readonly greatest: number;
  readonly signed: number;
}

export function errorSizes(errors: readonly number[]): ErrorSizes {
  const sizes = errors.map(Math.abs);
  return {
    median: quantile(sizes, 0.5),
    high: quantile(sizes, 0.95),
    greatest: Math.max(...sizes),
    signed: quantile(errors, 0.5),
  };
}
