import fc from 'fast-check';
import type { SetUp } from '../set-up/set-up.ts';
import type { Tire } from '../set-up/tire.ts';
import { anyStop, between } from '../stop/any-stop.testing.ts';
import type { StopInput } from '../stop/stop-input.ts';
import { slideRatioRange } from '../tire/slide-ratio-range.ts';
import type { FullStopSummary } from './full-stop.ts';
import type { FullStopInput } from './full-stop-input.ts';

/** How a generated stop brings its slip curve into what a Magic Formula can have. */
const anySlipFigures = fc.record({
  peakSlip: between(0.05, 0.2),
  bend: between(1.7, 3.5),
  slide: between(0.05, 0.95),
});

/** A tire with a slip curve that exists: `slide` of the way from the least to the greatest slide ratio, none under 0.55. */
function withCurve(
  tire: Tire,
  { peakSlip, bend, slide }: { peakSlip: number; bend: number; slide: number },
): Tire {
  const figures = { peakSlip, slipStiffness: bend / peakSlip };
  const { low, high } = slideRatioRange(figures);
  const least = Math.max(low, 0.55);
  return { ...tire, ...figures, slideRatio: least + slide * (Math.min(high, 0.95) - least) };
}

/** The same stop for `fullStop`. */
export function fullOf({
  setUp,
  road,
  foot,
  speed,
  rotorTemperatures,
  driverShare,
  lockedWheels,
}: StopInput): FullStopInput {
  return {
    setUp,
    road,
    speed,
    foot: { kind: 'ramp', ...foot },
    ...(rotorTemperatures === undefined ? {} : { rotorTemperatures }),
    ...(driverShare === undefined ? {} : { driverShare }),
    ...(lockedWheels === undefined ? {} : { lockedWheels }),
  };
}

/** Stops as for `fullStop` over a wide range of cars, brakes, roads and feet; most of them odd. */
export const anyFullStop: fc.Arbitrary<FullStopInput> = fc
  .record({ stop: anyStop, front: anySlipFigures, rear: anySlipFigures })
  .map(({ stop, front, rear }) => {
    const { frontTire, rearTire } = stop.setUp;
    const tires = { frontTire: withCurve(frontTire, front), rearTire: withCurve(rearTire, rear) };
    return fullOf({ ...stop, setUp: { ...stop.setUp, ...tires } });
  });

/** The same stop with another set-up. */
export function withSetUp(stop: FullStopInput, change: Partial<SetUp>): FullStopInput {
  return { ...stop, setUp: { ...stop.setUp, ...change } };
}

/** The same stop with neither antilock nor rear limit. */
export function withoutAntilock(stop: FullStopInput): FullStopInput {
  return withSetUp(stop, { antilock: { kind: 'none', electronicRearLimit: false } });
}

/** The same pads, as warm as you like. */
export function withFlatPads(stop: FullStopInput): FullStopInput {
  const flat = (brake: SetUp['frontBrake']): SetUp['frontBrake'] => {
    const pad = { ...brake.pad, frictionTemperatures: [20], frictions: [brake.pad.frictions[0] ?? 0.4] };
    return { ...brake, pad };
  };
  const { frontBrake, rearBrake } = stop.setUp;
  return withSetUp(stop, { frontBrake: flat(frontBrake), rearBrake: flat(rearBrake) });
}

/** Part of the energy of motion, 1, that a stop's books do not find again; negative where they find too much. */
export function lostInBooks({ energies }: FullStopSummary): number {
  const { kineticIn, ...out } = energies;
  return 1 - Object.values(out).reduce((sum, energy) => sum + energy, 0) / kineticIn;
}
