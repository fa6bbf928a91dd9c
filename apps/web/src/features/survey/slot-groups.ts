import type { PartSlot } from '@standstill/workshop';

/** The slots of a set-up in the order in which a person walks around the car. */
export const slotGroups: readonly { readonly title: string; readonly slots: readonly PartSlot[] }[] = [
  { title: 'Front brakes', slots: ['frontCaliper', 'frontPad', 'frontRotor', 'frontHose', 'frontTube'] },
  {
    title: 'Rear brakes',
    slots: ['rearCaliper', 'rearPad', 'rearRotor', 'rearDrum', 'rearHose', 'rearTube'],
  },
  {
    title: 'Foot to line pressure',
    slots: ['pedal', 'booster', 'masterCylinder', 'rearValve', 'fluid', 'antilock'],
  },
  { title: 'Tires', slots: ['frontTire', 'rearTire'] },
  { title: 'Parking', slots: ['parkingBrake'] },
];
