import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { standardGravity } from '../load/standard-gravity.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { between } from '../stop/any-stop.testing.ts';
import {
  anyBriskFullStop,
  brakeForce,
  lostInBooks,
  withFlatPads,
  withoutAntilock,
  withSetUp,
} from './any-full-stop.testing.ts';
import { fullStop, fullStopWorkspace } from './full-stop.ts';
import type { FullStopInput } from './full-stop-input.ts';
import { fullStopTrace } from './full-stop-trace.ts';

const march = fullStopWorkspace();
/** Without shrinking: a stop is dear, and a drawn one is as good as a simple one to look into. */
const runs = { numRuns: 500, endOnFailure: true };
/** s, stops that last longer are not traced: a trace keeps every look of the control. */
const longestTrace = 10;

/** Left for right. */
function mirrored(stop: FullStopInput): FullStopInput {
  const { car } = stop.setUp;
  return withSetUp(stop, { car: { ...car, leftLoadShare: 1 - car.leftLoadShare } });
}

/** Without drag, lift, rolling resistance, grade, water and engine drag. */
function withoutResistance(stop: FullStopInput): FullStopInput {
  const still = { dragArea: 0, frontLiftArea: 0, rearLiftArea: 0, rollingResistance: 0, engineDrag: 0 };
  const plain = withSetUp(stop, { car: { ...stop.setUp.car, ...still } });
  return { ...plain, road: { ...stop.road, grade: 0, waterDepth: 0 } };
}

/** On tires that no brake here brings to their limit, stiff and quick ones. */
function onSticky(stop: FullStopInput): FullStopInput {
  const sticky = { peakFriction: 3, loadSensitivity: 0, peakSlip: 0.1, slipStiffness: 20, slideRatio: 0.9 };
  const { frontTire, rearTire } = stop.setUp;
  const tires = { frontTire: { ...frontTire, ...sticky }, rearTire: { ...rearTire, ...sticky } };
  const road = { ...stop.road, surfaceFactor: 1, waterDepth: 0 };
  return { ...withSetUp(stop, tires), road, lockedWheels: true };
}

/** kg, the car with what turns in it. */
function effectiveMass({ setUp: { car, frontTire, rearTire } }: FullStopInput): number {
  const front = 2 * car.frontWheelInertia + car.frontDriveShare * car.drivelineInertia;
  const rear = 2 * car.rearWheelInertia + (1 - car.frontDriveShare) * car.drivelineInertia;
  return car.mass + front / frontTire.rollingRadius ** 2 + rear / rearTire.rollingRadius ** 2;
}

const torqueLimited = anyBriskFullStop
  .map((stop) => withFlatPads(withoutAntilock(onSticky(stop))))
  .filter((stop) => brakeForce(stop) > 500 && brakeForce(stop) < 8 * stop.setUp.car.mass);

describe('the books of a full stop', () => {
  it('close: the energy of motion is found again within 0.01 %, worst of 1,000', () => {
    let worst = 0;
    fc.assert(
      fc.property(anyBriskFullStop, (stop) => {
        const lost = Math.abs(lostInBooks(fullStop(stop, march)));
        worst = Math.max(worst, lost);
        expect(lost).toBeLessThan(1e-4);
      }),
      { ...runs, numRuns: 1000 },
    );
    console.info(`energy closure, worst of 1,000 stops: ${(100 * worst).toFixed(5)} %`);
  });

  it('start from the energy of car, wheels and driveline', () => {
    fc.assert(
      fc.property(withoutEngine(anyBriskFullStop), (stop) => {
        const { kineticIn } = fullStop(stop, march).energies;
        expect(kineticIn / (0.5 * effectiveMass(stop) * stop.speed ** 2)).toBeCloseTo(1, 12);
      }),
      runs,
    );
  });
});

function withoutEngine(stops: fc.Arbitrary<FullStopInput>): fc.Arbitrary<FullStopInput> {
  return stops.map((stop) => withSetUp(stop, { car: { ...stop.setUp.car, engineDrag: 0 } }));
}

describe('a full stop', () => {
  it('is not changed by a mirror, but for the side to which it pulls', () => {
    fc.assert(
      fc.property(anyBriskFullStop.map(withoutAntilock), (stop) => {
        fc.pre(fullStop(stop, march).time < longestTrace);
        const here = fullStopTrace(stop);
        const there = fullStopTrace(mirrored(stop));
        if (here.summary.cameToRest) expect(there.summary.distance / here.summary.distance).toBeCloseTo(1, 9);
        const scale = stop.setUp.car.mass * standardGravity;
        const middle = Math.floor(here.trace.time.length / 2);
        expect(Math.abs(here.trace.yawMoment[middle]! + there.trace.yawMoment[middle]!)).toBeLessThan(
          1e-6 * scale,
        );
      }),
      runs,
    );
  });

  it('with a control of its wheels is not changed by a mirror of an even car at all, and hardly by that of an uneven one', () => {
    let exact = 0;
    let close = 0;
    let stops = 0;
    fc.assert(
      fc.property(anyBriskFullStop, (stop) => {
        const here = fullStop(stop, march).distance;
        const there = fullStop(mirrored(stop), march).distance;
        if (here === Infinity || there === Infinity) return;
        stops += 1;
        if (here === there) exact += 1;
        if (Math.abs(there / here - 1) < 1e-9) close += 1;
      }),
      runs,
    );
    console.info(
      `mirror, any control: ${exact} of ${stops} stops the same to the last bit, ${close} within 1e-9`,
    );
    expect(close).toBeGreaterThan(0.8 * stops);
  });

  it('pulls to neither side with an even car', () => {
    const even = anyBriskFullStop.map((stop) =>
      withSetUp(stop, { car: { ...stop.setUp.car, leftLoadShare: 0.5 } }),
    );
    fc.assert(
      fc.property(even, (stop) => {
        fc.pre(fullStop(stop, march).time < longestTrace);
        const { yawMoment } = fullStopTrace(stop).trace;
        expect(yawMoment.every((moment) => moment === 0)).toBe(true);
      }),
      runs,
    );
  });

  it('comes to a true rest, with its wheels still or all but still', () => {
    fc.assert(
      fc.property(anyBriskFullStop, (stop) => {
        const { cameToRest } = fullStop(stop, march);
        if (cameToRest) expect(Math.abs(march.speed)).toBeLessThan(1e-9);
        else expect(march.speed).toBeGreaterThan(0);
        for (let wheel = 0; wheel < 4; wheel += 1)
          expect(march.dynamics.wheels.each[wheel]!.turning).toBeGreaterThanOrEqual(0);
      }),
      runs,
    );
  });

  // A wheel that all but lifts has no grip to slow it: let go by a control it runs on faster than the car. At a
  // creep a tire is a spring on which its wheel swings, let go by a control or not.
  it('keeps the slip of every wheel that keeps a tenth of its load between -0.1 and 1 (-0.3 under 5 m/s), and every number a number', () => {
    fc.assert(
      fc.property(anyBriskFullStop, (stop) => {
        fc.pre(fullStop(stop, march).time < longestTrace);
        const { trace, summary } = fullStopTrace(stop);
        trace.slip.forEach((slip, wheel) => {
          const load = trace.load[wheel]!;
          const isLight = Math.min(...load) < 0.1 * load[0]!;
          const least = (low: number, high: number): number =>
            Math.min(0, ...slip.filter((_, node) => trace.speed[node]! > low && trace.speed[node]! <= high));
          if (!isLight) expect(least(5, 200)).toBeGreaterThan(-0.1);
          if (!isLight) expect(least(-1, 5)).toBeGreaterThan(-0.3);
          expect(Math.max(...slip)).toBeLessThan(1 + 1e-9);
        });
        for (const load of trace.load) expect(Math.min(...load)).toBeGreaterThanOrEqual(0);
        const { front, rear, energies, cameToRest, ...others } = summary;
        const figures = Object.values(others).filter((figure) => typeof figure === 'number');
        const finite = [...Object.values(energies), ...Object.values(front), ...Object.values(rear)];
        expect(finite.every(Number.isFinite)).toBe(true);
        expect(figures.length).toBe(10);
        expect(figures).not.toContain(Number.NaN);
        expect(summary.distance === Infinity).toBe(!cameToRest);
      }),
      runs,
    );
  });

  it('is never shorter than the ideal stop with the same drag, lift, rolling resistance and grade, and no water', () => {
    let nearest = Infinity;
    fc.assert(
      fc.property(anyBriskFullStop, (stop) => {
        const { distance } = fullStop(stop, march);
        const ideal = idealDistance(stop);
        if (distance !== Infinity) nearest = Math.min(nearest, distance / ideal);
        expect(distance).toBeGreaterThan(ideal * (1 - 1e-6));
      }),
      runs,
    );
    console.info(`nearest to its ideal stop: ${nearest.toFixed(4)} times as far`);
  });
});

/**
 * m, with the best that four tires can give whatever their loads: all on the road at once, each at its peak, the load
 * shared as it serves best. No stop with the same resistance is shorter; wheels that turn take what they hold, too.
 */
function idealDistance(stop: FullStopInput): number {
  const { setUp, road, speed } = stop;
  const { car } = setUp;
  const slope = Math.sqrt(1 + road.grade ** 2);
  const weight = (car.mass * standardGravity) / slope;
  const lift = 0.5 * road.airDensity * (car.frontLiftArea + car.rearLiftArea);
  const steps = 400;
  let way = 0;
  for (let i = 0; i < steps; i += 1) {
    const now = ((i + 0.5) * speed) / steps;
    const load = weight - lift * now ** 2;
    const tires = Math.max(mostForce(setUp.frontTire, road, load), mostForce(setUp.rearTire, road, load));
    const air = 0.5 * road.airDensity * car.dragArea * now ** 2;
    const climb = weight * road.grade;
    const force = tires + air + car.rollingResistance * load + climb;
    way += (car.mass * now * speed) / steps / force;
  }
  return way;
}

/** N that four tires of one kind can give on a road without water: at their best with the load shared evenly. */
function mostForce(
  { peakFriction, nominalLoad, loadSensitivity }: SetUp['frontTire'],
  { surfaceFactor }: FullStopInput['road'],
  load: number,
): number {
  return surfaceFactor * peakFriction * load * (load / 4 / nominalLoad) ** -loadSensitivity;
}

describe('a full stop that the brakes decide', () => {
  it('level, at once and without resistance: distance times brake force over effective mass is v² / 2, within 0.5 %', () => {
    let worst = 0;
    fc.assert(
      fc.property(torqueLimited, (drawn) => {
        const stop = atOnce(withoutResistance(drawn));
        const { distance, frontSlideShare, rearSlideShare } = fullStop(stop, march);
        fc.pre(frontSlideShare === 0 && rearSlideShare === 0);
        const constant = (2 * distance * brakeForce(stop)) / (effectiveMass(stop) * stop.speed ** 2);
        worst = Math.max(worst, Math.abs(constant - 1));
        expect(Math.abs(constant - 1)).toBeLessThan(5e-3);
      }),
      runs,
    );
    console.info(`distance x brake force / effective mass: ${(100 * worst).toFixed(3)} % off v²/2 at worst`);
  });

  it('is shorter with every newton that the brakes make more, with drag, grade and all', () => {
    fc.assert(
      fc.property(torqueLimited, between(1.01, 1.5), (stop, more) => {
        const harder = stronger(stop, more);
        const here = fullStop(stop, march).distance;
        if (here === Infinity) return;
        expect(fullStop(harder, march).distance).toBeLessThan(here);
      }),
      runs,
    );
  });
});

/** As near to pressure at once as this goes: no booster's lag, tubes so short that a line's is the least there is. */
function atOnce(stop: FullStopInput): FullStopInput {
  const { setUp, foot } = stop;
  const short = (brake: SetUp['frontBrake']): SetUp['frontBrake'] => ({
    ...brake,
    tube: { ...brake.tube, length: 0 },
  });
  const parts = {
    booster: { kind: 'none' },
    frontBrake: short(setUp.frontBrake),
    rearBrake: short(setUp.rearBrake),
  } as const;
  const pedalForce = foot.kind === 'ramp' ? foot.force : 0;
  return {
    ...withSetUp(stop, parts),
    speed: Math.max(20, stop.speed),
    foot: { kind: 'ramp', force: pedalForce, rampTime: 0 },
  };
}

/** The same stop with a pad friction `more` times as high. */
function stronger(stop: FullStopInput, more: number): FullStopInput {
  const grip = (brake: SetUp['frontBrake']): SetUp['frontBrake'] => {
    const frictions = brake.pad.frictions.map((friction) => friction * more);
    return { ...brake, pad: { ...brake.pad, frictions } };
  };
  return withSetUp(stop, { frontBrake: grip(stop.setUp.frontBrake), rearBrake: grip(stop.setUp.rearBrake) });
}
