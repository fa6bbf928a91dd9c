import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { linePressures } from '../foot-to-pressure/line-pressures.ts';
import type { AxleBrake } from '../set-up/axle-brake.ts';
import { anyPedalForce, anySetUp } from '../set-up/any-set-up.testing.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { pedalTravel } from './pedal-travel.ts';

/** Set-ups and forces whose pressures a brake could have. */
const anyPush = fc
  .record({ setUp: anySetUp, pedalForce: anyPedalForce })
  .filter(({ setUp, pedalForce }) => linePressures({ setUp, pedalForce }).front < 50e6)
  .filter(({ setUp, pedalForce }) => linePressures({ setUp, pedalForce }).rear < 50e6);
const anyFactor = fc.double({ min: 1, max: 3, noNaN: true });

function withBrakes(setUp: SetUp, change: (brake: AxleBrake) => AxleBrake): SetUp {
  return { ...setUp, frontBrake: change(setUp.frontBrake), rearBrake: change(setUp.rearBrake) };
}

type Change = (setUp: SetUp, factor: number) => SetUp;
const softer: ReadonlyArray<readonly [string, Change]> = [
  [
    'longer hoses',
    (setUp, k) => withBrakes(setUp, (b) => ({ ...b, hose: { ...b.hose, length: k * b.hose.length } })),
  ],
  [
    'softer hoses',
    (setUp, k) =>
      withBrakes(setUp, (b) => ({
        ...b,
        hose: { ...b.hose, expansions: b.hose.expansions.map((e) => k * e) },
      })),
  ],
  [
    'more air',
    (setUp, k) => ({ ...setUp, fluid: { ...setUp.fluid, trappedAir: k * setUp.fluid.trappedAir } }),
  ],
  [
    'softer pads',
    (setUp, k) =>
      withBrakes(setUp, (b) => ({ ...b, pad: { ...b.pad, compressibility: k * b.pad.compressibility } })),
  ],
  [
    'softer calipers',
    (setUp, k) =>
      withBrakes(setUp, (b) => ({
        ...b,
        caliper: { ...b.caliper, volumeCompliance: k * b.caliper.volumeCompliance },
      })),
  ],
  [
    'more clearance',
    (setUp, k) => withBrakes(setUp, (b) => ({ ...b, runningClearance: k * b.runningClearance })),
  ],
  [
    'softer fluid',
    (setUp, k) => ({ ...setUp, fluid: { ...setUp.fluid, bulkModulus: setUp.fluid.bulkModulus / k } }),
  ],
  [
    'longer tubes',
    (setUp, k) => withBrakes(setUp, (b) => ({ ...b, tube: { ...b.tube, length: k * b.tube.length } })),
  ],
];

describe('pedal travel', () => {
  it('never falls as the foot pushes harder', () => {
    fc.assert(
      fc.property(anyPush, fc.double({ min: 0, max: 1, noNaN: true }), ({ setUp, pedalForce }, part) => {
        const light = pedalTravel({ setUp, pedalForce: part * pedalForce }).travel;
        expect(pedalTravel({ setUp, pedalForce }).travel).toBeGreaterThanOrEqual(light - 1e-12);
      }),
      { numRuns: 1000 },
    );
  });

  it.each(softer)('is never less with %s', (_name, change) => {
    fc.assert(
      fc.property(anyPush, anyFactor, ({ setUp, pedalForce }, factor) => {
        const before = pedalTravel({ setUp, pedalForce });
        const after = pedalTravel({ setUp: change(setUp, factor), pedalForce });
        expect(after.travel).toBeGreaterThanOrEqual(before.travel - 1e-15);
        expect(after.strokeReserve).toBeLessThanOrEqual(before.strokeReserve + 1e-15);
      }),
      { numRuns: 500 },
    );
  });

  it('is the sum of parts that are numbers and not negative', () => {
    fc.assert(
      fc.property(anyPush, (push) => {
        const { travel, parts, share } = pedalTravel(push);
        const values: readonly number[] = Object.values(parts);
        for (const part of values) expect(part).toBeGreaterThanOrEqual(0);
        expect(values.reduce((sum, part) => sum + part, 0)).toBeCloseTo(travel, 12);
        expect(share * push.setUp.pedal.availableTravel).toBeCloseTo(travel, 12);
      }),
      { numRuns: 1000 },
    );
  });

  it('conserves work: what the rod moves is what both cylinders swallow', () => {
    fc.assert(
      fc.property(anyPush, (push) => {
        const { setUp, pedalForce } = push;
        fc.pre(pedalForce > 1);
        const { travel, parts, frontVolume, rearVolume } = pedalTravel(push);
        const rodTravel = (travel - parts.freePlay - parts.flex) / setUp.pedal.ratio;
        const noValve: SetUp = { ...setUp, rearValve: { kind: 'none' } };
        const { front, rear } = linePressures({ setUp: noValve, pedalForce });
        const masterForce = front / masterGain(setUp);
        const work = (front * frontVolume + rear * rearVolume) / setUp.masterCylinder.efficiency;
        expect(work / (masterForce * rodTravel + 1e-300)).toBeCloseTo(
          frontVolume + rearVolume > 0 ? 1 : 0,
          9,
        );
      }),
      { numRuns: 500 },
    );
  });

  it('is the same for a diagonal and for a front-rear split', () => {
    fc.assert(
      fc.property(anyPush, ({ setUp, pedalForce }) => {
        const of = (circuitSplit: SetUp['circuitSplit']) =>
          pedalTravel({ setUp: { ...setUp, circuitSplit }, pedalForce });
        expect(of('diagonal')).toEqual(of('front-rear'));
      }),
      { numRuns: 500 },
    );
  });
});

/** Front pressure over master force, worked out here apart from the code under test. */
function masterGain({ masterCylinder }: SetUp): number {
  const [bore, share] =
    masterCylinder.kind === 'tandem'
      ? [masterCylinder.bore, 1]
      : [masterCylinder.frontBore, masterCylinder.frontForceShare];
  return (share * masterCylinder.efficiency) / (Math.PI * (bore / 2) ** 2);
}
