import { randomStream } from '@standstill/numerics';
import { describe, expect, it } from 'vitest';
import type { StopInput } from '../stop/stop-input.ts';
import { adaptiveStop } from './adaptive-stop.testing.ts';
import { fullOf, withFlatPads } from './any-full-stop.testing.ts';
import { drawStop, type StopKind } from './drawn-stops.testing.ts';
import { fullStop } from './full-stop.ts';

/**
 * Cars of a kind with pads of one friction, wheels that roll freely at the first touch, and a short way to go. Of the locked
 * ones those are taken whose wheels do not start to turn again, which the other route cannot do.
 */
function plain(kind: StopKind, car: number): StopInput {
  const drawn = drawStop(randomStream(7, `${kind}/${car}`), kind);
  const { setUp } = withFlatPads(fullOf(drawn));
  return {
    ...drawn,
    speed: Math.min(drawn.speed, 25),
    setUp: { ...setUp, car: { ...setUp.car, engineDrag: 0 } },
  };
}

const cars = [
  ['torque-limited', 0],
  ['torque-limited', 1],
  ['fading', 2],
  ['locked', 4],
  ['locked', 5],
  ['locked', 6],
  ['locked', 7],
] as const;

describe('the full stop and a general-purpose adaptive solver', () => {
  it.each(cars)('go the same distance within a millionth (%s, car %i)', (kind, car) => {
    const stop = plain(kind, car);
    const summary = fullStop(fullOf(stop));
    const other = adaptiveStop(stop, summary.time);
    console.info(
      `${kind}, car ${car}: ${summary.distance.toFixed(4)} m and ${other.toFixed(4)} m, off by ${(summary.distance / other - 1).toExponential(1)}`,
    );
    expect(Math.abs(summary.distance / other - 1)).toBeLessThan(1e-6);
  });
});
