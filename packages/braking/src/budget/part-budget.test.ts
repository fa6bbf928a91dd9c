import { describe, expect, it } from 'vitest';
import { exampleRoad, exampleSetUp } from '../set-up/example-set-up.ts';
import type { SetUp } from '../set-up/set-up.ts';
import { quickStop } from '../stop/quick-stop.ts';
import { partBudget } from './part-budget.ts';
import { changedSlots, partSlots, withPartsFrom } from './part-slot.ts';

const { frontBrake } = exampleSetUp;
const stop = { road: exampleRoad, foot: { force: 130, rampTime: 0.2 }, speed: 27.8 };
const caliper = { ...frontBrake.caliper, kind: 'fixed' as const, pistonDiameters: [0.04, 0.042] };
const kit: SetUp = {
  ...exampleSetUp,
  frontTire: { ...exampleSetUp.frontTire, peakFriction: 1.1 },
  frontBrake: { ...frontBrake, caliper, hose: { ...frontBrake.hose, length: 0.35 } },
};

describe('the budget between two set-ups', () => {
  it('finds the slots that differ', () => {
    expect(changedSlots(exampleSetUp, kit)).toEqual(['frontTire', 'frontBrake.caliper', 'frontBrake.hose']);
    expect(changedSlots(kit, kit)).toEqual([]);
  });

  it('can put every slot of one set-up into another', () => {
    expect(withPartsFrom(exampleSetUp, kit, partSlots)).toEqual(kit);
    expect(withPartsFrom(exampleSetUp, kit, [])).toEqual(exampleSetUp);
  });

  it('adds up to the change of the stop', () => {
    const { before, after, shares } = partBudget({ ...stop, from: exampleSetUp, to: kit });
    const sum = shares.reduce((total, { distance }) => total + distance, 0);
    expect(before).toBe(quickStop({ ...stop, setUp: exampleSetUp }).distance);
    expect(after).toBe(quickStop({ ...stop, setUp: kit }).distance);
    expect(sum).toBeCloseTo(after - before, 9);
  });

  it('gives the caliper the feet where torque is what is short, and a fluid that stays nothing', () => {
    const { shares } = partBudget({
      ...stop,
      from: exampleSetUp,
      to: kit,
      slots: ['frontBrake.caliper', 'fluid'],
    });
    expect(shares.map(({ slot }) => slot)).toEqual(['frontBrake.caliper', 'fluid']);
    expect(shares[0]!.distance).toBeLessThan(-1);
    expect(shares[1]!.distance).toBe(0);
  });

  it('turns its signs around when the set-ups change places', () => {
    const there = partBudget({ ...stop, from: exampleSetUp, to: kit }).shares;
    const back = partBudget({ ...stop, from: kit, to: exampleSetUp }).shares;
    for (const [index, share] of there.entries())
      expect(share.distance).toBeCloseTo(-back[index]!.distance, 9);
  });

  it('refuses more slots than it can try', () => {
    expect(() => partBudget({ ...stop, from: exampleSetUp, to: kit, slots: partSlots })).toThrow('slots');
  });
});
