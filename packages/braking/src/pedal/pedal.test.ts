import { describe, expect, it } from 'vitest';
import { boreArea } from '../foot-to-pressure/bore-area.ts';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { axleVolumes } from '../travel/axle-volumes.ts';
import { bulkModulusAt } from '../travel/bulk-modulus-at.ts';
import { pedalTravel } from '../travel/pedal-travel.ts';
import { assistLost } from './assist-lost.ts';
import { brakedDeceleration } from './braked-deceleration.ts';
import { circuitLost } from './circuit-lost.ts';
import { knockedBack } from './knocked-back.ts';
import { greatestForceWithin } from './greatest-force-within.ts';
import { pedalCurve } from './pedal-curve.ts';
import { pedalForceForDeceleration } from './pedal-force-for-deceleration.ts';
import { pushesWithoutEngine } from './pushes-without-engine.ts';
import { reservoirDemand } from './reservoir-demand.ts';

const { frontBrake, rearBrake, fluid } = exampleSetUp;

describe('one circuit lost', () => {
  it('bottoms the dead chamber of a tandem cylinder, then feeds the live one', () => {
    const strokes = { primary: 0.02, secondary: 0.014, primaryFeeds: 'rear' } as const;
    const { front } = linePressures({ setUp: exampleSetUp, pedalForce: 300 });
    const volume = axleVolumes({ brake: frontBrake, fluid, pressure: front }).total;
    const rod = 0.02 + volume / boreArea(0.0222);
    const lost = circuitLost({ setUp: exampleSetUp, lost: 'rear', pedalForce: 300, strokes });
    expect(lost.travel).toBeCloseTo(4 * rod + 0.006 + 2e-6 * 300, 12);
    expect(lost.strokeReserve).toBeCloseTo(0.014 - volume / boreArea(0.0222), 12);
    expect([lost.frontPressure, lost.rearPressure]).toEqual([front, 0]);
  });

  it('loses a wheel of each axle with a diagonal, the same whichever', () => {
    const setUp: SetUp = { ...exampleSetUp, circuitSplit: 'diagonal' };
    const one = circuitLost({ setUp, lost: 'first-diagonal', pedalForce: 250 });
    expect(one).toEqual(circuitLost({ setUp, lost: 'second-diagonal', pedalForce: 250 }));
    expect(one.live).toEqual({ front: 0.5, rear: 0.5 });
    const both = linePressures({ setUp, pedalForce: 250 });
    expect([one.frontPressure, one.rearPressure]).toEqual([both.front, both.rear]);
  });

  it('lets a balance bar swing until the dead cylinder is down', () => {
    const masterCylinder = {
      kind: 'balance-bar',
      frontBore: 0.019,
      rearBore: 0.0175,
      frontForceShare: 0.6,
      stroke: 0.028,
      efficiency: 0.95,
    } as const;
    const setUp: SetUp = { ...exampleSetUp, masterCylinder, booster: { kind: 'none' } };
    const { rear } = linePressures({ setUp, pedalForce: 300 });
    const used = axleVolumes({ brake: rearBrake, fluid, pressure: rear }).total / boreArea(0.0175);
    const lost = circuitLost({ setUp, lost: 'front', pedalForce: 300 });
    expect(lost.travel).toBeCloseTo(4 * (0.6 * 0.028 + 0.4 * used) + 0.006 + 2e-6 * 300, 12);
    expect(lost.strokeReserve).toBeCloseTo(0.028 - used, 12);
  });

  it('brakes with what is left, held at the tires', () => {
    const push = { setUp: exampleSetUp, road: exampleRoad, frontPressure: 12e6, rearPressure: 12e6 };
    const rearOnly = brakedDeceleration({ ...push, live: { front: 0, rear: 1 } });
    // Rear axle at its peak: no more than all of its load at rest, and less as the car pitches.
    const restLoad = 0.44 * 1200 * 9.80665;
    expect(rearOnly).toBeLessThan(restLoad / 1200);
    expect(rearOnly).toBeGreaterThan(0.6 * (restLoad / 1200));
    expect(brakedDeceleration(push)).toBeGreaterThan(2 * rearOnly);
  });
});

describe('the assist', () => {
  it('is gone with the vacuum: the foot goes through one for one', () => {
    const { front } = linePressures({ setUp: assistLost(exampleSetUp), pedalForce: 400 });
    expect(front).toBeCloseTo((400 * 4 * 0.9 * 0.96) / boreArea(0.0222), 3);
  });

  it('is used up by pushes as the air let in says', () => {
    const { booster } = exampleSetUp;
    if (booster.kind !== 'vacuum') expect.unreachable();
    const chambers = { vacuumVolume: 0.003, deadVolume: 0.0002 };
    const setUp = { ...exampleSetUp, booster };
    const pushes = pushesWithoutEngine({ setUp, chambers, pedalForce: 120, count: 2 });
    // By hand from the travel of the first push.
    const rod = (pushes.travel[0]! - 0.006 - 2e-6 * 120) / 4;
    const rest = 101_325 - 65_000;
    const swept = 0.042 * rod;
    const frontSide = (rest * 0.003) / (0.003 - swept);
    const assist = 150 + 3 * (120 * 4 * 0.9);
    const working = frontSide + assist / (0.042 * 0.95);
    const after = (rest * 0.003 + working * (0.0002 + swept)) / 0.0032;
    expect(pushes.vacuum[1]).toBeCloseTo(101_325 - after, 2);
  });
});

describe('the curve', () => {
  it('has the knee of the booster as a point of its own', () => {
    const { force, runOutForce } = pedalCurve({ setUp: exampleSetUp, greatestForce: 500, count: 26 });
    expect(force).toContain(runOutForce);
    const before = linePressures({ setUp: exampleSetUp, pedalForce: runOutForce - 0.01 });
    const after = linePressures({ setUp: exampleSetUp, pedalForce: runOutForce + 0.01 });
    expect([before.boosterRunOut, after.boosterRunOut]).toEqual([false, true]);
  });
});

describe('what is left over', () => {
  it('finds the greatest force with travel, also where there is none', () => {
    expect(greatestForceWithin((force) => 250 - force, 400)).toBeCloseTo(250, 6);
    expect(greatestForceWithin((force) => 600 - force, 400)).toBe(400);
    expect(greatestForceWithin(() => -1, 400)).toBe(0);
  });

  it('says where no foot gives a deceleration', () => {
    const wanted = { setUp: assistLost(exampleSetUp), road: exampleRoad, deceleration: 9.7 };
    expect(pedalForceForDeceleration(wanted)).toBeUndefined();
  });

  it('swallows four piston areas of wear an axle', () => {
    const wear = { frontBrake, rearBrake, frontWear: 0.008, rearWear: 0 };
    expect(reservoirDemand(wear)).toBeCloseTo(4 * (Math.PI / 4) * 0.054 ** 2 * 0.008, 12);
  });

  it('takes no fluid for the wear of a drum, and knocks no shoes back', () => {
    const drum: AxleBrake = { ...rearBrake, rotor: { ...rearBrake.rotor, kind: 'drum' } };
    const wear = { frontBrake, rearBrake: drum, frontWear: 0, rearWear: 0.004 };
    expect(reservoirDemand(wear)).toBe(0);
    const hubs = { runOut: 2e-4, bearingPlay: 0, axleFloat: 0 };
    const pushed = knockedBack({ ...exampleSetUp, rearBrake: drum }, { front: hubs, rear: hubs });
    expect(pushed.frontBrake.runningClearance).toBeCloseTo(frontBrake.runningClearance + 1e-4, 12);
    expect(pushed.rearBrake).toBe(drum);
  });

  it('has a longer pedal on hot fluid', () => {
    const hot = bulkModulusAt({ bulkModulus: fluid.bulkModulus, temperature: 120 });
    expect(bulkModulusAt({ bulkModulus: 1.6e9, temperature: 60 })).toBe(1.6e9);
    const heated: SetUp = { ...exampleSetUp, fluid: { ...fluid, bulkModulus: hot } };
    expect(pedalTravel({ setUp: heated, pedalForce: 300 }).travel).toBeGreaterThan(
      pedalTravel({ setUp: exampleSetUp, pedalForce: 300 }).travel,
    );
  });
});
