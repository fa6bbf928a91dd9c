import type { ClassValue } from './class-value.ts';

export interface SurfaceClass {
  readonly title: string;
  /** λ_μ, 1, factor on the tire's dry peak friction. */
  readonly factor: ClassValue;
  /** m, depth of standing water. */
  readonly waterDepth: ClassValue;
}

const noWater: ClassValue = { value: 0, spread: 0, known: 'assumed', note: 'No film of water.' };

/**
 * Road surfaces as a factor on the tire's dry peak friction. One factor is a coarse thing on water: grip there falls
 * with speed and depth, see `wetPeakFactor`.
 *
 * Source: [common-practice]
 */
export const surfaceClasses = {
  dry: {
    title: 'Dry, clean asphalt',
    waterDepth: noWater,
    factor: {
      value: 1,
      spread: 0.04,
      known: 'common practice',
      note: 'The reference surface; the spread is from one good road to another.',
    },
  },
  worn: {
    title: 'Dry, polished or dusty asphalt',
    waterDepth: noWater,
    factor: {
      value: 0.88,
      spread: 0.06,
      known: 'common practice',
      note: 'Polished stone, dust or sealing patches.',
    },
  },
  damp: {
    title: 'Damp asphalt, no film of water',
    waterDepth: noWater,
    factor: {
      value: 0.78,
      spread: 0.08,
      known: 'common practice',
      note: 'Just after rain; little change with speed.',
    },
  },
  wet: {
    title: 'Wet asphalt, 1 mm of water',
    waterDepth: noWater,
    factor: {
      value: 0.62,
      spread: 0.1,
      known: 'common practice',
      note: 'Near 50 km/h, tires with tread; the Bosch table has 0.55 / 0.85 there and far less at speed.',
    },
  },
} as const satisfies Readonly<Record<string, SurfaceClass>>;
