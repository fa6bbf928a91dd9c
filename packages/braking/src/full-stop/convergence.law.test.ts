import { quantile } from '@standstill/numerics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import { anyBriskFullStop, withFlatPads, withoutAntilock, withSetUp } from './any-full-stop.testing.ts';
import { usualAntilockControl } from './antilock-control.ts';
import { fullStop, fullStopWorkspace } from './full-stop.ts';
import type { FullStopInput } from './full-stop-input.ts';

const march = fullStopWorkspace();
const distanceOf = (stop: FullStopInput, refinement = 1): number =>
  fullStop({ ...stop, refinement }, march).distance;

/** By how much, 1, the distance of each stop changes when every step is halved; and what all of them together do. */
function halvings(
  stops: fc.Arbitrary<FullStopInput>,
  count: number,
): { changes: number[]; together: number } {
  const changes: number[] = [];
  let sum = 0;
  fc.assert(
    fc.property(stops, (stop) => {
      const whole = distanceOf(stop);
      const halved = distanceOf(stop, 2);
      expect(halved === Infinity).toBe(whole === Infinity);
      if (whole === Infinity) return;
      changes.push(Math.abs(halved / whole - 1));
      sum += halved / whole - 1;
    }),
    { numRuns: count, endOnFailure: true },
  );
  return { changes, together: Math.abs(sum / changes.length) };
}

function percent(share: number): string {
  return `${(100 * share).toPrecision(2)} %`;
}

/**
 * Orders that the errors of three marches, each of half the step, show: log2 of how much closer each pair is. From half the
 * usual step on: at that one the march itself halves rough steps, so that the next grid is not half of it all through.
 */
function orders(figureAt: (refinement: number) => number): readonly number[] {
  const figures = [2, 4, 8, 16].map(figureAt);
  const gaps = figures.slice(1).map((figure, at) => Math.abs(figure - figures[at]!));
  return gaps.slice(1).map((gap, at) => Math.log2(gaps[at]! / gap));
}

/** Smooth all through: no booster, no valve, no push-out, flat friction, a foot that is there from before the first touch. */
function smooth(): FullStopInput {
  const { car } = exampleSetUp;
  const free = (brake: AxleBrake): AxleBrake => ({
    ...brake,
    caliper: { ...brake.caliper, pushOutPressure: 0 },
  });
  const stop = withFlatPads({
    setUp: exampleSetUp,
    road: exampleRoad,
    foot: { kind: 'ramp', force: 200, rampTime: 0 },
    speed: 5,
    lockedWheels: true,
    antilockControl: { ...usualAntilockControl, samplePeriod: 0.006 },
  });
  return withoutAntilock(
    withSetUp(stop, {
      car,
      booster: { kind: 'none' },
      rearValve: { kind: 'none' },
      frontBrake: free(stop.setUp.frontBrake),
      rearBrake: free(stop.setUp.rearBrake),
    }),
  );
}

describe('halving every step of a full stop', () => {
  it('without any control changes every stop by less than 0.05 %', () => {
    const { changes } = halvings(anyBriskFullStop.map(withoutAntilock), 500);
    const worst = Math.max(...changes);
    console.info(
      `halving without control: median ${percent(quantile(changes, 0.5))}, worst of ${changes.length} ${percent(worst)}`,
    );
    expect(worst).toBeLessThan(5e-4);
  });

  it('with a threshold control changes the median by less than 0.005 %, four of five by less than 0.05 %, the mean hardly', () => {
    const antilock = {
      kind: 'threshold',
      efficiency: 0.9,
      minimumSpeed: 2,
      electronicRearLimit: true,
    } as const;
    const stops = anyBriskFullStop.map((stop) => withSetUp(stop, { antilock }));
    const { changes, together } = halvings(stops, 500);
    const close = changes.filter((change) => change < 5e-4).length / changes.length;
    console.info(
      `halving with antilock: median ${percent(quantile(changes, 0.5))}, ${percent(close)} of ${changes.length} stops within 0.05 %, mean of all ${percent(together)}`,
    );
    expect(quantile(changes, 0.5)).toBeLessThan(5e-5);
    expect(close).toBeGreaterThan(0.8);
  });

  it('with a threshold control changes the mean over 200 draws of one car by less than 0.05 %', () => {
    const base = {
      setUp: exampleSetUp,
      road: exampleRoad,
      foot: { kind: 'ramp', force: 300, rampTime: 0.2 },
    } as const;
    const mean = (refinement: number): number => {
      let sum = 0;
      for (let draw = 0; draw < 200; draw += 1)
        sum += distanceOf({ ...base, speed: 27.8, controlPhase: (draw + 0.5) / 200 }, refinement);
      return sum / 200;
    };
    const change = Math.abs(mean(2) / mean(1) - 1);
    console.info(`halving with antilock, mean over 200 draws: ${percent(change)}`);
    expect(change).toBeLessThan(5e-4);
  });
});

describe('the order of the full stop, each step half the one before', () => {
  it('is four in distance, in when rest is found, and in how far the body is pitched there', () => {
    const stop = smooth();
    const show = (all: readonly number[]): string => all.map((order) => order.toFixed(2)).join(', ');
    const distance = orders((refinement) => distanceOf(stop, refinement));
    const time = orders((refinement) => fullStop({ ...stop, refinement }, march).time);
    const pitch = orders((refinement) => {
      fullStop({ ...stop, refinement }, march);
      return march.dynamics.car.pitch;
    });
    console.info(
      `order at rest, in distance: ${show(distance)}; in time: ${show(time)}; in pitch: ${show(pitch)}`,
    );
    expect(distance[0]).toBeGreaterThan(3.5);
    expect(time[0]).toBeGreaterThan(3.5);
    expect(pitch[0]).toBeGreaterThan(3.5);
  });
});
