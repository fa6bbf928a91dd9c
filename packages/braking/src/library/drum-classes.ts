import type { ShoeArrangement, ShoeGeometry } from '../set-up/drum-brake.ts';
import type { ClassCurve, ClassValue } from './class-value.ts';

export interface DrumClass {
  readonly title: string;
  readonly arrangement: ShoeArrangement;
  /** Of a usual shoe, lengths over the drum's radius. */
  readonly shoes: ShoeGeometry;
  /** C*, 1, at a lining friction of 0.38. */
  readonly brakeFactor: ClassValue;
}

/** 25° to 135° from a pivot at 85 % of the radius. */
const shoes: ShoeGeometry = {
  pivotDistance: 0.85,
  leverArm: 1.55,
  liningStart: (25 * Math.PI) / 180,
  liningEnd: (135 * Math.PI) / 180,
};

/**
 * Drum brakes by the way in which their shoes are carried: brake factor and its spread.
 *
 * Source: [bosch-drums], [common-practice]
 */
export const drumClasses = {
  simplex: {
    title: 'Drum with a leading and a trailing shoe',
    arrangement: 'simplex',
    shoes,
    brakeFactor: {
      value: 2,
      spread: 0.25,
      known: 'from memory',
      note: 'Bosch handbook, 2.0 at a lining friction of 0.38; differs with pivot, arc and bedding.',
    },
  },
  duplex: {
    title: 'Drum with two leading shoes',
    arrangement: 'duplex',
    shoes,
    brakeFactor: {
      value: 3,
      spread: 0.45,
      known: 'from memory',
      note: 'Bosch handbook, 3.0 at a lining friction of 0.38; forward travel only.',
    },
  },
  duoServo: {
    title: 'Duo-servo drum',
    arrangement: 'duo-servo',
    shoes: { ...shoes, leverArm: 1.5 },
    brakeFactor: {
      value: 5,
      spread: 1,
      known: 'from memory',
      note: 'Bosch handbook, 5.0 at a lining friction of 0.38; the most sensitive to friction of all.',
    },
  },
} as const satisfies Readonly<Record<string, DrumClass>>;

/** What holds for the parts of drum brakes of any class. */
export interface DrumParts {
  /** p_0, Pa. */
  readonly pushOutPressure: ClassValue;
  /** η, 1. */
  readonly efficiency: ClassValue;
  /** m³/Pa over m² of wheel cylinder: stretch of shoes, drum and cylinder. */
  readonly volumeCompliancePerArea: ClassValue;
  /** m. */
  readonly shoeClearance: ClassValue;
  /** m/Pa. */
  readonly compressibility: ClassValue;
  /** °C. */
  readonly frictionTemperatures: readonly number[];
  /** μ at those temperatures, 1. */
  readonly frictions: ClassCurve;
}

/**
 * What to assume of shoes, springs and cylinder of a drum brake.
 *
 * Source: [common-practice]
 */
export const drumParts: DrumParts = {
  pushOutPressure: {
    value: 400_000,
    spread: 150_000,
    known: 'from memory',
    note: 'Return springs take 50 to 100 psi before the shoes press.',
  },
  efficiency: {
    value: 0.96,
    spread: 0.02,
    known: 'common practice',
    note: 'Cylinder cups and shoe pads in good order.',
  },
  volumeCompliancePerArea: {
    value: 4e-11,
    spread: 1.5e-11,
    known: 'assumed',
    note: 'Shoes and drum give more than a caliper.',
  },
  shoeClearance: {
    value: 0.00025,
    spread: 0.0001,
    known: 'common practice',
    note: 'With an adjuster that works; without one far more.',
  },
  compressibility: { value: 2e-11, spread: 8e-12, known: 'assumed', note: 'Molded lining on a thin shoe.' },
  frictionTemperatures: [20, 100, 200, 300, 400],
  frictions: {
    values: [0.36, 0.38, 0.38, 0.33, 0.26],
    factorSpread: 0.1,
    known: 'common practice',
    note: 'Molded lining; shape and level from common practice, no published curve stands behind it.',
  },
};
