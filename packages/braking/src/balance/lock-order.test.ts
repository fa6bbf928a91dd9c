import { describe, expect, it } from 'vitest';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { annexFiveVerdict } from './annex-five-verdict.ts';
import { balanceCurve } from './balance-curve.ts';
import { lockOrder } from './lock-order.ts';
import { rearFirstDecelerations } from './rear-first-decelerations.ts';

const road = exampleRoad;
const withoutValve: SetUp = { ...exampleSetUp, rearValve: { kind: 'none' } };
const { rearBrake, pedal } = exampleSetUp;
/** The same car with a rear caliper far too large. */
const rearHeavy: SetUp = {
  ...withoutValve,
  antilock: { kind: 'none', electronicRearLimit: false },
  rearBrake: { ...rearBrake, caliper: { ...rearBrake.caliper, pistonDiameters: [0.054] } },
};
/** No booster and a short pedal: the strongest foot locks nothing. */
const feeble: SetUp = { ...exampleSetUp, booster: { kind: 'none' }, pedal: { ...pedal, ratio: 1.5 } };

/** N, foot that locks the first axle with front pads at an interface temperature in °C. */
function pedalAt(front: number): number {
  return lockOrder({ setUp: exampleSetUp, road, padTemperatures: { front, rear: 100 } }).at?.pedalForce ?? 0;
}

describe('lockOrder', () => {
  it('has the front lock first with the valve, below the deceleration at which the rear would', () => {
    const order = lockOrder({ setUp: exampleSetUp, road });
    expect(order.first).toBe('front');
    expect(order.at).toEqual(order.front);
    expect(order.rear?.deceleration).toBeGreaterThan(order.front?.deceleration ?? Infinity);
  });

  it('has the rear lock first where the rear brakes are too strong', () => {
    const order = lockOrder({ setUp: rearHeavy, road });
    expect(order.first).toBe('rear');
    expect(order.at).toEqual(order.rear);
  });

  it('says that nothing locks where 1000 N cannot, and what they give', () => {
    const order = lockOrder({ setUp: feeble, road });
    expect(order).toMatchObject({ first: 'none', at: null, front: null, rear: null });
    expect(order.atStrongestFoot.pedalForce).toBeCloseTo(1000, 9);
    expect(order.atStrongestFoot.deceleration).toBeGreaterThan(0.1);
    expect(order.atStrongestFoot.deceleration).toBeLessThan(0.9);
  });

  it('locks earlier with hot pads that bite harder, and later with faded ones', () => {
    expect(pedalAt(300)).toBeLessThan(pedalAt(100));
    expect(pedalAt(600)).toBeGreaterThan(pedalAt(100));
  });

  it('locks first on the lighter side of a car with the driver alone in it', () => {
    const driverAlone = { ...exampleSetUp, car: { ...exampleSetUp.car, leftLoadShare: 0.53 } };
    expect(lockOrder({ setUp: driverAlone, road }).at?.deceleration).toBeLessThan(
      lockOrder({ setUp: exampleSetUp, road }).at?.deceleration ?? 0,
    );
  });

  it('refuses a road without grip', () => {
    expect(() => lockOrder({ setUp: exampleSetUp, road: { ...road, surfaceFactor: 0 } })).toThrow(
      'surface factor',
    );
  });
});

describe('rearFirstDecelerations', () => {
  it('finds the rear first only near the limit of the dry road where there is no valve', () => {
    const found = rearFirstDecelerations({ setUp: withoutValve, road });
    expect(found?.lowest).toBeGreaterThan(0.9);
    expect(found?.highest).toBeGreaterThan(found?.lowest ?? Infinity);
    expect(rearFirstDecelerations({ setUp: exampleSetUp, road })).toBeNull();
  });

  it('finds a rear that is first on a slippery road though the front is first in the dry', () => {
    // A late, flat knee: too much rear below it, too little far above it.
    const lateKnee: SetUp = {
      ...rearHeavy,
      rearValve: { kind: 'proportioning', kneePressure: 2e6, slope: 0 },
    };
    expect(lockOrder({ setUp: lateKnee, road }).first).toBe('front');
    const found = rearFirstDecelerations({ setUp: lateKnee, road });
    expect(found?.highest).toBeLessThan(0.6);
  });
});

describe('annexFiveVerdict', () => {
  it('passes the car with its valve and calls the verdict a yardstick where there is ABS', () => {
    expect(annexFiveVerdict({ setUp: exampleSetUp })).toMatchObject({
      rearBelowFront: true,
      adhesionWithinLimit: true,
      examinedTo: 0.8,
      yardstickOnly: true,
    });
  });

  it('fails strong rear brakes and says where', () => {
    const verdict = annexFiveVerdict({ setUp: rearHeavy });
    expect(verdict).toMatchObject({ rearBelowFront: false, yardstickOnly: false });
    expect(verdict.rearAboveFrontAt?.deceleration).toBeCloseTo(0.15, 9);
  });

  it('says how far it could look where the foot ends before 0.80 g', () => {
    const { examinedTo } = annexFiveVerdict({ setUp: feeble });
    expect(examinedTo).toBeGreaterThan(0.1);
    expect(examinedTo).toBeLessThan(0.8);
  });

  it('fails front brakes that do nearly all the work of a tail-heavy car', () => {
    const frontOnly = {
      ...exampleSetUp,
      car: { ...exampleSetUp.car, frontLoadShare: 0.42 },
      rearBrake: { ...rearBrake, caliper: { ...rearBrake.caliper, pistonDiameters: [0.012] } },
    };
    expect(annexFiveVerdict({ setUp: frontOnly }).adhesionWithinLimit).toBe(false);
  });
});

describe('balanceCurve', () => {
  it('ends the installed curve where the strongest foot does', () => {
    const { ideal, installed } = balanceCurve({ setUp: feeble });
    expect(ideal).toHaveLength(61);
    expect(installed.length).toBeLessThan(61);
    const end = lockOrder({ setUp: feeble, road }).atStrongestFoot.deceleration;
    expect(installed.at(-1)?.deceleration).toBeLessThanOrEqual(end);
  });
});
