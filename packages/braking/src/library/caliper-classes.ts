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
  /** J/(kg K) of the body. */
  readonly bodySpecificHeat: ClassValue;
  /** W/(m² K) of piston area, from the pad's plate into the body past the piston. */
  readonly bodyConductance: ClassValue;
  /** W/(m² K) of piston area, from the piston's skirt into the bore. */
  readonly boreConductance: ClassValue;
  /** W/(m² K) of wetted area, between fluid and what surrounds it. */
  readonly fluidConductance: ClassValue;
  /** m, depth of the fluid behind the pistons. */
  readonly fluidDepth: ClassValue;
}

const runningClearance: ClassValue = {
  value: 0.0001,
  spread: 0.00004,
  known: 'common practice',
  note: 'Seal roll-back on a true rotor with good bearings; run-out and knock-back come on top.',
};

const boreConductance: ClassValue = {
  value: 2000,
  spread: 1000,
  known: 'from memory',
  note: 'A gap of some hundredths of a millimeter filled with fluid around the wetted part of the skirt, over the area of the piston.',
};
const fluidConductance: ClassValue = {
  value: 300,
  spread: 120,
  known: 'from memory',
  note: 'Free convection of a thick liquid in a narrow space, 150 to 500.',
};
const fluidDepth: ClassValue = {
  value: 0.008,
  spread: 0.003,
  known: 'common practice',
  note: 'Pads half worn; about 5 mm with new ones, 15 mm at their limit.',
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
    bodySpecificHeat: {
      value: 480,
      spread: 20,
      known: 'from memory',
      note: 'Ductile iron.',
    },
    bodyConductance: {
      value: 700,
      spread: 350,
      known: 'assumed',
      note: 'Abutments, and the fingers that one of the two pads lies on, over the area of the pistons.',
    },
    boreConductance,
    fluidConductance,
    fluidDepth,
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
    bodySpecificHeat: {
      value: 900,
      spread: 20,
      known: 'from memory',
      note: 'Aluminum alloy; an iron body takes about half per kilogram.',
    },
    bodyConductance: {
      value: 250,
      spread: 120,
      known: 'assumed',
      note: 'Abutments or pins alone, over the area of the pistons.',
    },
    boreConductance,
    fluidConductance,
    fluidDepth,
  },
} as const satisfies Readonly<Record<string, CaliperClass>>;
