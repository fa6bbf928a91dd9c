import { quickStop, shapley, stopWorkspace, withPartsFrom } from '@standstill/braking';
import type { PartSlot as PhysicsSlot } from '@standstill/braking';
import { partSlots, rearDiscSlots } from '../job/document/part-slots.ts';
import type { PartSlot } from '../job/document/part-slots.ts';
import type { JobSetUp } from '../job/job.ts';
import type { SetUpDifference } from '../results/prediction.ts';
import type { Settled } from '../settle/settle.ts';
import { stopInputOf } from './evaluate.ts';

/** What a part of the job fills in the physics: a caliper brings its running clearance, a pad its contact. */
const fills: Readonly<Record<PartSlot, readonly PhysicsSlot[]>> = {
  frontTire: ['frontTire'],
  rearTire: ['rearTire'],
  pedal: ['pedal'],
  booster: ['booster'],
  masterCylinder: ['masterCylinder'],
  rearValve: ['rearValve'],
  antilock: ['antilock'],
  fluid: ['fluid'],
  frontCaliper: ['frontBrake.caliper', 'frontBrake.runningClearance'],
  frontPad: ['frontBrake.pad', 'frontBrake.pressureAssumption'],
  frontRotor: ['frontBrake.rotor'],
  frontHose: ['frontBrake.hose'],
  frontTube: ['frontBrake.tube'],
  rearCaliper: ['rearBrake.caliper', 'rearBrake.runningClearance'],
  rearPad: ['rearBrake.pad', 'rearBrake.pressureAssumption'],
  rearRotor: ['rearBrake.rotor'],
  rearHose: ['rearBrake.hose'],
  rearTube: ['rearBrake.tube'],
  rearDrum: [
    'rearBrake.caliper',
    'rearBrake.runningClearance',
    'rearBrake.pad',
    'rearBrake.pressureAssumption',
    'rearBrake.rotor',
  ],
  parkingBrake: [],
};

/** Slots in which two set-ups hold different parts that a stop can feel. */
export function changedParts(reference: JobSetUp, changed: JobSetUp): readonly PartSlot[] {
  const slots = Object.keys(partSlots) as PartSlot[];
  // What has nothing to do with a stop, as the parking brake, is no part of it.
  const differ = slots.filter(
    (slot) => fills[slot].length > 0 && reference.slots[slot] !== changed.slots[slot],
  );
  if (!differ.includes('rearDrum')) return differ;
  return differ.filter((slot) => !(rearDiscSlots as readonly PartSlot[]).includes(slot)); // the drum stands for them
}

/** With more changed slots than this the split would take too long, and is left out. */
const mostParts = 12;

/**
 * Which changed part buys which distance, with the central values.
 *
 * Equation: Shapley value of the stopping distance over the changed parts, all combinations by `quickStop`
 * Assumes: every mix of old and new parts counts, also such as could not be bolted together.
 * Valid: up to 12 changed parts; above, no split is given.
 *
 * @param slots - changed slots
 * @param reference - the set-up as it is
 * @param changed - the set-up as it would be
 * @returns m per part, negative where it shortens the stop; they sum to the whole difference
 */
export function distanceByPart(
  slots: readonly PartSlot[],
  reference: Settled,
  changed: Settled,
): SetUpDifference['byPart'] {
  if (slots.length > mostParts) return [];
  const march = stopWorkspace();
  const shares = shapley(slots.length, (set) => {
    const taken = slots.filter((_, index) => (set & (1 << index)) !== 0).flatMap((slot) => fills[slot]);
    const setUp = withPartsFrom(reference.setUp, changed.setUp, taken);
    return quickStop(stopInputOf({ ...reference, setUp }), march).distance;
  });
  return slots.map((part, index) => ({
    part,
    title: partSlots[part].title,
    distance_m: shares[index] ?? NaN,
  }));
}
