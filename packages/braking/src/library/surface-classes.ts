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
 * Road surfaces as a factor on the tire's dry peak friction, and the water that stands on them: what water takes falls with
 * speed, depth and tread, see `wetPeakFactor`, and comes on top of the factor.
 *
 * Source: [common-practice], [wong], [noon-1994], [bosch-handbook], [forkenbrock-1999]
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
    title: 'Wet asphalt, half a millimeter of water',
    waterDepth: {
      value: 0.0005,
      spread: 0.0003,
      known: 'assumed',
      note: 'Steady rain on a road that drains; heavy rain stands 1 mm deep, ruts and puddles 2 mm and more.',
    },
    factor: {
      value: 1,
      spread: 0.12,
      known: 'common practice',
      note: 'How rough the stone is; what the water takes comes on top, by speed, depth and tread (the Bosch table). Near 50 km/h, on a tread about half worn, 0.64 of the dry grip is left.',
    },
  },
  gravel: {
    title: 'Loose gravel',
    waterDepth: noWater,
    factor: {
      value: 0.66,
      spread: 0.1,
      known: 'from memory',
      note: 'Wong has a peak of 0.6 against 0.8 to 0.9 on dry asphalt; Noon (read) slides at 0.35 against 0.65. A locked wheel heaps gravel up before it, which no slip curve here knows: ABS made stops 27 % longer on it (Forkenbrock 1999, read).',
    },
  },
  packedSnow: {
    title: 'Hard-packed snow',
    waterDepth: noWater,
    factor: {
      value: 0.26,
      spread: 0.06,
      known: 'from memory',
      note: 'Wong has a peak of 0.2 against 0.8 to 0.9; Noon (read) slides at 0.20 to 0.25 against 0.65. Winter tires hold more, the tire classes here are not winter tires.',
    },
  },
  ice: {
    title: 'Ice',
    waterDepth: noWater,
    factor: {
      value: 0.12,
      spread: 0.035,
      known: 'from memory',
      note: 'Wong has a peak of 0.1 against 0.8 to 0.9, Bosch (read) 0.1 or less, Noon (read) slides at 0.10 to 0.15. Near melting it is worse, in deep cold better.',
    },
  },
} as const satisfies Readonly<Record<string, SurfaceClass>>;
