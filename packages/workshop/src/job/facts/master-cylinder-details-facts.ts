import type { Facts } from './fact.ts';

/** What a lost circuit and worn pads ask of a master cylinder; two cylinders with a balance bar have the last alone. */
export const masterCylinderDetailsFacts = {
  primaryStroke: {
    title: 'Stroke of the primary piston, next to the push rod',
    kind: 'travel',
    low: 0.003,
    high: 0.06,
    example: '0.7 in',
    spread: 'size',
  },
  secondaryStroke: {
    title: 'Stroke of the secondary piston',
    kind: 'travel',
    low: 0.003,
    high: 0.06,
    example: '0.6 in',
    spread: 'size',
  },
  reservoirVolume: {
    title: 'Reservoir between its marks',
    kind: 'fluid-volume',
    low: 1e-5,
    high: 2e-3,
    example: '150 cm³',
    spread: 'property',
  },
} as const satisfies Facts;
