import type { ClassValue } from './class-value.ts';

export interface CaliperClass {
  readonly title: string;
  /** p_0, Pa. */
  readonly pushOutPressure: ClassValue;
  /** η, 1. */
  readonly efficiency: ClassValue;
  /** m³/Pa over m² of piston area on one side: stretch and seal roll scale with the pistons. */
  readonly volumeCompliancePerArea: ClassValue;
  /** m, gap between one pad and the rotor at rest. */
  readonly runningClearance: ClassValue;
}

const runningClearance: ClassValue = {
  value: 0.0001,
  spread: 0.00004,
  known: 'common practice',
  note: 'Seal roll-back on a true rotor with good bearings; run-out and knock-back come on top.',
};

/**
 * What to assume of a caliper whose maker states nothing but its pistons.
 *
 * Source: [common-practice]
 */
export const caliperClasses = {
  floating: {
    title: 'Floating caliper',
    pushOutPressure: {
      value: 50_000,
      spread: 20_000,
      known: 'common practice',
      note: 'Seal and slide-pin friction.',
    },
    efficiency: {
      value: 0.95,
      spread: 0.02,
      known: 'common practice',
      note: 'Slides in good order; dry slides are worse.',
    },
    volumeCompliancePerArea: {
      value: 2.6e-11,
      spread: 0.8e-11,
      known: 'assumed',
      note: 'About 0.26 mm of piston travel at 10 MPa.',
    },
    runningClearance,
  },
  fixed: {
    title: 'Fixed caliper with opposed pistons',
    pushOutPressure: {
      value: 40_000,
      spread: 15_000,
      known: 'common practice',
      note: 'Seal friction alone.',
    },
    efficiency: {
      value: 0.97,
      spread: 0.015,
      known: 'common practice',
      note: 'No slides that could drag; only seals.',
    },
    volumeCompliancePerArea: {
      value: 2.2e-11,
      spread: 0.8e-11,
      known: 'assumed',
      note: 'Both sides together, over the area of one side: about 0.22 mm at 10 MPa.',
    },
    runningClearance,
  },
} as const satisfies Readonly<Record<string, CaliperClass>>;
