import type { Facts } from './fact.ts';

/** What only pushes without engine ask of a vacuum booster. */
export const boosterDetailsFacts = {
  vacuumVolume: {
    title: 'Vacuum side of the booster, with hose and any tank',
    kind: 'fluid-volume',
    low: 2e-4,
    high: 0.03,
    example: '2.5 L',
    spread: 'property',
  },
  deadVolume: {
    title: 'Working side of the booster at rest',
    kind: 'fluid-volume',
    low: 2e-5,
    high: 0.004,
    example: '0.3 L',
    spread: 'property',
  },
} as const satisfies Facts;
