import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import { boreArea } from '../foot-to-pressure/bore-area.ts';
import { anyRoad, anySetUp } from '../set-up/any-set-up.testing.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { pedalTravel } from '../travel/pedal-travel.ts';
import { assistLost } from './assist-lost.ts';
import { brakedDeceleration } from './braked-deceleration.ts';
import { circuitLost } from './circuit-lost.ts';
import { circuitsOf } from './circuit.ts';
import { knockedBack } from './knocked-back.ts';
import { pedalCurve } from './pedal-curve.ts';
import { pedalFirmness } from './pedal-firmness.ts';
import { pedalForceForDeceleration } from './pedal-force-for-deceleration.ts';
import { pushesWithoutEngine } from './pushes-without-engine.ts';
import type { TandemStrokes } from './tandem-strokes.ts';

const anyForce = fc.double({ min: 5, max: 900, noNaN: true });
const anyShare = fc.double({ min: 0, max: 1, noNaN: true });

/** Set-ups and forces whose pressures a brake could have. */
const anyPush = fc
  .record({ setUp: anySetUp, pedalForce: anyForce, share: anyShare, side: fc.boolean(), road: anyRoad })
  .filter(({ setUp, pedalForce }) => linePressures({ setUp, pedalForce: pedalForce + 2 }).front < 50e6)
  .filter(({ setUp, pedalForce }) => linePressures({ setUp, pedalForce: pedalForce + 2 }).rear < 50e6);

const runs = { numRuns: 500 };

/** The full stroke cut in two somewhere. */
function strokesOf(setUp: SetUp, share: number, side: boolean): TandemStrokes {
  const primary = (0.2 + 0.6 * share) * setUp.masterCylinder.stroke;
  return {
    primary,
    secondary: setUp.masterCylinder.stroke - primary,
    primaryFeeds: side ? 'front' : 'rear',
  };
}

describe('the push as a curve', () => {
  it('has travel, pressures and force that never fall, and the travel of each push', () => {
    fc.assert(
      fc.property(anyPush, ({ setUp, pedalForce }) => {
        const { force, travel, frontPressure, rearPressure } = pedalCurve({
          setUp,
          greatestForce: pedalForce,
          count: 12,
        });
        for (let index = 1; index < force.length; index += 1) {
          expect(force[index]).toBeGreaterThanOrEqual(force[index - 1]!);
          expect(travel[index]).toBeGreaterThanOrEqual(travel[index - 1]! - 1e-12);
          expect(frontPressure[index]).toBeGreaterThanOrEqual(frontPressure[index - 1]! - 1e-6);
          expect(rearPressure[index]).toBeGreaterThanOrEqual(rearPressure[index - 1]! - 1e-6);
        }
        expect(travel.at(-1)).toBe(pedalTravel({ setUp, pedalForce }).travel);
      }),
      runs,
    );
  });

  it('has a firmness above zero: more travel always takes more force', () => {
    fc.assert(
      fc.property(anyPush, ({ setUp, pedalForce }) => {
        const firmness = pedalFirmness({ setUp, pedalForce });
        expect(firmness).toBeGreaterThan(0);
        expect(Number.isFinite(firmness)).toBe(true);
      }),
      runs,
    );
  });

  it('takes more travel with air that gives slowly than with air that gives fast', () => {
    fc.assert(
      fc.property(anyPush, ({ setUp, pedalForce }) => {
        const slow = pedalTravel({ setUp, pedalForce }).travel;
        const fast = pedalTravel({ setUp, pedalForce, airExponent: 1.4 }).travel;
        expect(fast).toBeLessThanOrEqual(slow + 1e-15);
      }),
      runs,
    );
  });

  it('is never shorter with the pads knocked back', () => {
    const gap = fc.double({ min: 0, max: 0.0008, noNaN: true });
    fc.assert(
      fc.property(anyPush, gap, gap, ({ setUp, pedalForce }, runOut, axleFloat) => {
        const hubs = {
          front: { runOut, bearingPlay: 0, axleFloat: 0 },
          rear: { runOut, bearingPlay: 0, axleFloat },
        };
        const travel = pedalTravel({ setUp: knockedBack(setUp, hubs), pedalForce }).travel;
        expect(travel).toBeGreaterThanOrEqual(pedalTravel({ setUp, pedalForce }).travel - 1e-15);
      }),
      runs,
    );
  });
});

describe('one circuit lost', () => {
  it('never slows the car more than both', () => {
    fc.assert(
      fc.property(anyPush, ({ setUp, pedalForce, share, side, road }) => {
        const { front, rear } = linePressures({ setUp, pedalForce });
        const both = brakedDeceleration({ setUp, road, frontPressure: front, rearPressure: rear });
        for (const lost of circuitsOf(setUp)) {
          const { frontPressure, rearPressure, live } = circuitLost({
            setUp,
            lost,
            pedalForce,
            strokes: strokesOf(setUp, share, side),
          });
          expect(frontPressure).toBeLessThanOrEqual(front);
          expect(rearPressure).toBeLessThanOrEqual(rear);
          const left = brakedDeceleration({ setUp, road, frontPressure, rearPressure, live });
          expect(left).toBeLessThanOrEqual(both + 1e-9);
        }
      }),
      runs,
    );
  });

  it('never takes less travel, where both chambers had the stroke before', () => {
    fc.assert(
      fc.property(anyPush, ({ setUp, pedalForce, share, side }) => {
        const strokes = strokesOf(setUp, share, side);
        const { frontVolume, rearVolume } = pedalTravel({ setUp, pedalForce });
        fc.pre(hasStroke(setUp, strokes, frontVolume, rearVolume));
        for (const lost of circuitsOf(setUp))
          expect(circuitLost({ setUp, lost, pedalForce, strokes }).extraTravel).toBeGreaterThanOrEqual(
            -1e-12,
          );
      }),
      runs,
    );
  });

  it('takes more travel for more force, and more with air in the live circuit', () => {
    fc.assert(
      fc.property(anyPush, ({ setUp, pedalForce, share }) => {
        for (const lost of circuitsOf(setUp)) {
          const { travel } = circuitLost({ setUp, lost, pedalForce });
          const light = circuitLost({ setUp, lost, pedalForce: share * pedalForce });
          expect(travel).toBeGreaterThanOrEqual(light.travel - 1e-12);
          const airy = { ...setUp, fluid: { ...setUp.fluid, trappedAir: 2 * setUp.fluid.trappedAir } };
          expect(circuitLost({ setUp: airy, lost, pedalForce }).travel).toBeGreaterThanOrEqual(
            travel - 1e-15,
          );
        }
      }),
      runs,
    );
  });
});

function hasStroke(setUp: SetUp, strokes: TandemStrokes, front: number, rear: number): boolean {
  const { masterCylinder } = setUp;
  if (masterCylinder.kind === 'balance-bar') {
    const { frontBore, rearBore, stroke } = masterCylinder;
    return front / boreArea(frontBore) <= stroke && rear / boreArea(rearBore) <= stroke;
  }
  const area = boreArea(masterCylinder.bore);
  const byAxle = setUp.circuitSplit === 'front-rear';
  const half = (front + rear) / 2;
  const primary = byAxle ? (strokes.primaryFeeds === 'front' ? front : rear) : half;
  const secondary = byAxle ? front + rear - primary : half;
  return primary / area <= strokes.primary && secondary / area <= strokes.secondary;
}

describe('the foot for a deceleration', () => {
  it('gives that deceleration, and a lost assist or circuit never asks for less', () => {
    const anyWanted = fc.double({ min: 0.5, max: 8, noNaN: true });
    fc.assert(
      fc.property(anyPush, anyWanted, ({ setUp, road }, deceleration) => {
        const pedalForce = pedalForceForDeceleration({ setUp, road, deceleration });
        fc.pre(pedalForce !== undefined && pedalForce > 0);
        const { front, rear } = linePressures({ setUp, pedalForce });
        const found = brakedDeceleration({ setUp, road, frontPressure: front, rearPressure: rear });
        expect(found).toBeCloseTo(deceleration, 4);
        const bare = pedalForceForDeceleration({ setUp: assistLost(setUp), road, deceleration });
        expect(bare ?? Infinity).toBeGreaterThanOrEqual(pedalForce - 1e-6);
        const half = pedalForceForDeceleration({
          setUp,
          road,
          deceleration,
          live: { front: 0.5, rear: 0.5 },
        });
        expect(half ?? Infinity).toBeGreaterThanOrEqual(pedalForce - 1e-6);
      }),
      runs,
    );
  });
});

describe('pushes without engine', () => {
  it('leave less vacuum each time and never more pressure, down to no assist', () => {
    const anyChambers = fc.record({
      vacuumVolume: fc.double({ min: 5e-3, max: 0.02, noNaN: true }),
      deadVolume: fc.double({ min: 1e-5, max: 1e-3, noNaN: true }),
    });
    fc.assert(
      fc.property(anyPush, anyChambers, ({ setUp, pedalForce }, chambers) => {
        const { booster } = setUp;
        fc.pre(booster.kind === 'vacuum');
        const reach = pedalTravel({ setUp, pedalForce });
        fc.pre(
          reach.strokeReserve > 0 &&
            setUp.masterCylinder.stroke * booster.diaphragmArea < 0.9 * chambers.vacuumVolume,
        );
        const pushes = pushesWithoutEngine({ setUp: { ...setUp, booster }, chambers, pedalForce, count: 8 });
        const bare = linePressures({ setUp: assistLost(setUp), pedalForce }).front;
        for (let push = 0; push < 8; push += 1) {
          expect(pushes.frontPressure[push]).toBeGreaterThanOrEqual(bare * (1 - 1e-9));
          if (push === 0) continue;
          expect(pushes.vacuum[push]).toBeLessThanOrEqual(pushes.vacuum[push - 1]! + 1e-6);
          expect(pushes.frontPressure[push]).toBeLessThanOrEqual(
            pushes.frontPressure[push - 1]! * (1 + 1e-9),
          );
        }
      }),
      runs,
    );
  });
});
