import fc from 'fast-check';
import { brakeTorque } from '../corner/brake-torque.ts';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import { standardGravity } from '../load/standard-gravity.ts';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { SetUp } from '../set-up/set-up.ts';
import type { Tire } from '../set-up/tire.ts';
import { anyStop, between } from '../stop/any-stop.testing.ts';
import type { StopInput } from '../stop/stop-input.ts';
import { heldWetFactor } from '../tire/held-wet-factor.ts';
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

/** m/s² that brakes and tires could make of a stop at its speed, by the static functions, less what a descent takes. */
function possibleDeceleration(stop: FullStopInput): number {
  const { setUp, road, speed } = stop;
  const water = Math.min(
    heldWetFactor({ tire: setUp.frontTire, road, speed }),
    heldWetFactor({ tire: setUp.rearTire, road, speed }),
  );
  const friction = Math.min(setUp.frontTire.peakFriction, setUp.rearTire.peakFriction);
  const grip = 0.55 * water * road.surfaceFactor * friction * standardGravity;
  return Math.min(grip, brakeForce(stop) / setUp.car.mass) + Math.min(0, road.grade) * standardGravity;
}

/** N that a foot's held force makes all four brakes ask at the road while their pads are at their first friction. */
export function brakeForce({ setUp, foot }: FullStopInput): number {
  const { frontBrake, rearBrake, frontTire, rearTire } = setUp;
  const pressures = linePressures({ setUp, pedalForce: foot.kind === 'ramp' ? foot.force : 0 });
  const front = axleForce(frontBrake, pressures.front, frontTire.rollingRadius);
  return front + axleForce(rearBrake, pressures.rear, rearTire.rollingRadius);
}

function axleForce(brake: AxleBrake, pressure: number, radius: number): number {
  return (2 * brakeTorque({ brake, pressure, friction: brake.pad.frictions[0] ?? 0 })) / radius;
}

/** As `anyFullStop`, without those that would last for minutes: brakes and tires could do 1.2 m/s² at least. */
export const anyBriskFullStop = anyFullStop.filter((stop) => possibleDeceleration(stop) > 1.2);

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
  const { frontBrake, rearBrake } = stop.setUp;
  return withSetUp(stop, { frontBrake: withFlatPad(frontBrake), rearBrake: withFlatPad(rearBrake) });
}

function withFlatPad(brake: AxleBrake): AxleBrake {
  const pad = { ...brake.pad, frictionTemperatures: [20], frictions: [brake.pad.frictions[0] ?? 0.4] };
  return { ...brake, pad };
}

/** Part of the energy of motion, 1, that a stop's books do not find again; negative where they find too much. */
export function lostInBooks({ energies }: FullStopSummary): number {
  const { kineticIn, ...out } = energies;
  return 1 - Object.values(out).reduce((sum, energy) => sum + energy, 0) / kineticIn;
}
