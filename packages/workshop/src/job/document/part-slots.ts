import type { PartKind } from './part-schemas.ts';

/** The places of a set-up that a part can stand in, and what kind stands there. */
export const partSlots = {
  frontTire: { kind: 'tire', title: 'front tires' },
  rearTire: { kind: 'tire', title: 'rear tires' },
  pedal: { kind: 'pedal', title: 'pedal' },
  booster: { kind: 'booster', title: 'booster' },
  masterCylinder: { kind: 'master-cylinder', title: 'master cylinder' },
  rearValve: { kind: 'rear-valve', title: 'rear valve' },
  antilock: { kind: 'antilock', title: 'ABS' },
  fluid: { kind: 'fluid', title: 'fluid' },
  frontCaliper: { kind: 'caliper', title: 'front calipers' },
  frontPad: { kind: 'pad', title: 'front pads' },
  frontRotor: { kind: 'rotor', title: 'front rotors' },
  frontHose: { kind: 'hose', title: 'front hoses' },
  frontTube: { kind: 'tube', title: 'front lines' },
  rearCaliper: { kind: 'caliper', title: 'rear calipers' },
  rearPad: { kind: 'pad', title: 'rear pads' },
  rearRotor: { kind: 'rotor', title: 'rear rotors' },
  rearHose: { kind: 'hose', title: 'rear hoses' },
  rearTube: { kind: 'tube', title: 'rear lines' },
  rearDrum: { kind: 'drum', title: 'rear drums' },
  parkingBrake: { kind: 'parking-brake', title: 'parking brake' },
} as const satisfies Readonly<Record<string, { readonly kind: PartKind; readonly title: string }>>;

export type PartSlot = keyof typeof partSlots;

/** What a set-up says of a slot with nothing in it. */
export const none = 'none';

/** Slots that a car may have nothing in. */
export const emptiableSlots = [
  'booster',
  'rearValve',
  'antilock',
  'rearDrum',
  'parkingBrake',
] as const satisfies readonly PartSlot[];

/** Slots of a rear disc brake: a drum stands for all three. */
export const rearDiscSlots = ['rearCaliper', 'rearPad', 'rearRotor'] as const satisfies readonly PartSlot[];

/** Slots that may be left out: filled from stated classes and listed as assumed. */
export const assumableSlots = [
  'rearValve',
  'antilock',
  'fluid',
  'frontHose',
  'frontTube',
  'rearHose',
  'rearTube',
  'rearDrum',
  'parkingBrake',
] as const satisfies readonly PartSlot[];
