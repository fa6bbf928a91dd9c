import type { AxleBrake } from '../set-up/axle-brake.ts';
import type { SetUp } from '../set-up/set-up.ts';

type BrakePart = 'caliper' | 'pad' | 'rotor' | 'hose' | 'tube' | 'runningClearance' | 'pressureAssumption';

/** A place in a set-up that one part fills. */
export type PartSlot =
  | 'car'
  | 'frontTire'
  | 'rearTire'
  | 'pedal'
  | 'booster'
  | 'masterCylinder'
  | 'rearValve'
  | 'antilock'
  | 'fluid'
  | `frontBrake.${BrakePart}`
  | `rearBrake.${BrakePart}`;

const wholeSlots = [
  'car',
  'frontTire',
  'rearTire',
  'pedal',
  'booster',
  'masterCylinder',
  'rearValve',
  'antilock',
  'fluid',
] as const satisfies readonly (PartSlot & keyof SetUp)[];

const brakeParts: readonly BrakePart[] = [
  'caliper',
  'pad',
  'rotor',
  'hose',
  'tube',
  'runningClearance',
  'pressureAssumption',
];

/** Every slot, in the order in which parts are shown. */
export const partSlots: readonly PartSlot[] = [
  ...wholeSlots,
  ...brakeParts.map((part): PartSlot => `frontBrake.${part}`),
  ...brakeParts.map((part): PartSlot => `rearBrake.${part}`),
];

/**
 * Answers a set-up with some slots filled from another one.
 *
 * @param base - the set-up that gives the rest
 * @param donor - the set-up that gives the parts in `slots`
 * @param slots - which slots
 * @returns the mixed set-up
 * Source: [geometry]
 * @example
 * withPartsFrom(exampleSetUp, { ...exampleSetUp, pedal: { ...exampleSetUp.pedal, ratio: 5 } }, ['pedal']).pedal.ratio // => 5
 */
export function withPartsFrom(base: SetUp, donor: SetUp, slots: readonly PartSlot[]): SetUp {
  const whole = Object.fromEntries(
    wholeSlots.filter((slot) => slots.includes(slot)).map((slot) => [slot, donor[slot]]),
  );
  return {
    ...base,
    ...whole,
    frontBrake: mixedBrake(base.frontBrake, donor.frontBrake, (part) => slots.includes(`frontBrake.${part}`)),
    rearBrake: mixedBrake(base.rearBrake, donor.rearBrake, (part) => slots.includes(`rearBrake.${part}`)),
  };
}

function mixedBrake(base: AxleBrake, donor: AxleBrake, fromDonor: (part: BrakePart) => boolean): AxleBrake {
  const taken = brakeParts.filter(fromDonor).map((part) => [part, donor[part]]);
  return { ...base, ...Object.fromEntries(taken) };
}

/**
 * Answers in which slots two set-ups differ.
 *
 * @param first - one set-up
 * @param second - the other
 * @returns the slots, in the order of `partSlots`
 * Source: [geometry]
 * @example
 * changedSlots(exampleSetUp, { ...exampleSetUp, pedal: { ...exampleSetUp.pedal, ratio: 5 } }).length // => 1
 */
export function changedSlots(first: SetUp, second: SetUp): readonly PartSlot[] {
  return partSlots.filter(
    (slot) => JSON.stringify(partIn(first, slot)) !== JSON.stringify(partIn(second, slot)),
  );
}

function partIn(setUp: SetUp, slot: PartSlot): unknown {
  const whole = wholeSlots.find((name) => name === slot);
  if (whole !== undefined) return setUp[whole];
  const part = brakeParts.find((name) => slot.endsWith(`.${name}`)) ?? 'pad';
  return slot.startsWith('front') ? setUp.frontBrake[part] : setUp.rearBrake[part];
}
