import type { ClassValue } from './class-value.ts';

export interface TireClass {
  readonly title: string;
  /** μ_0, 1. */
  readonly peakFriction: ClassValue;
  /** F_z0, N. */
  readonly nominalLoad: ClassValue;
  /** n, 1. */
  readonly loadSensitivity: ClassValue;
  /** μ_slide / μ_peak, 1. */
  readonly slideRatio: ClassValue;
  /** κ_p, 1. */
  readonly peakSlip: ClassValue;
  /** C_κ / F_peak, 1. */
  readonly slipStiffness: ClassValue;
  /** σ, m. */
  readonly relaxationLength: ClassValue;
}

const practice =
  'Common practice, warm tire on clean dry asphalt; tires of one class differ by the spread and more.';

function inPractice(value: number, spread: number): ClassValue {
  return { value, spread, known: 'common practice', note: practice };
}

const nominalLoad: ClassValue = {
  value: 3500,
  spread: 0,
  known: 'assumed',
  note: 'The load at which the class friction is taken to hold; a definition, so without spread.',
};

const relaxationLength: ClassValue = {
  value: 0.2,
  spread: 0.07,
  known: 'from memory',
  note: 'Lengthwise, about two thirds of a rolling radius; stiff low tires relax over a shorter way.',
};

function loadSensitivity(value: number): ClassValue {
  return {
    value,
    spread: 0.03,
    known: 'from memory',
    note: 'Doubling the load takes 5 to 15 % off the peak friction (an exponent of about 0.07 to 0.23).',
  };
}

/**
 * Tires by class: what to assume until the car has been measured.
 *
 * Source: [common-practice]
 */
export const tireClasses = {
  road: {
    title: 'Road tire',
    peakFriction: inPractice(0.95, 0.06),
    nominalLoad,
    loadSensitivity: loadSensitivity(0.11),
    slideRatio: inPractice(0.78, 0.05),
    peakSlip: inPractice(0.11, 0.02),
    slipStiffness: inPractice(22, 3),
    relaxationLength,
  },
  sportyRoad: {
    title: 'Sporty road tire',
    peakFriction: inPractice(1.05, 0.06),
    nominalLoad,
    loadSensitivity: loadSensitivity(0.1),
    slideRatio: inPractice(0.8, 0.05),
    peakSlip: inPractice(0.1, 0.015),
    slipStiffness: inPractice(25, 3),
    relaxationLength,
  },
  semiSlick: {
    title: 'Semi-slick tire, road-legal',
    peakFriction: inPractice(1.2, 0.08),
    nominalLoad,
    loadSensitivity: loadSensitivity(0.09),
    slideRatio: inPractice(0.82, 0.05),
    peakSlip: inPractice(0.09, 0.015),
    slipStiffness: inPractice(29, 4),
    relaxationLength,
  },
} as const satisfies Readonly<Record<string, TireClass>>;
