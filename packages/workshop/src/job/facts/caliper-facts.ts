import type { Fact, Facts } from './fact.ts';

/** Each piston of one side. */
export const pistonFact = {
  title: 'Piston diameter',
  kind: 'bore',
  low: 0.015,
  high: 0.1,
  example: '54 mm',
  required: true,
  spread: 'size',
} as const satisfies Fact;

export const caliperFacts = {
  pushOutPressure: {
    title: 'Push-out pressure',
    kind: 'line-pressure',
    low: 0,
    high: 1e6,
    example: '7 psi',
    spread: 'property',
  },
  efficiency: {
    title: 'Caliper efficiency',
    kind: 'share',
    low: 0.5,
    high: 1,
    example: '0.98',
    spread: 'share',
  },
  volumeCompliance: {
    title: 'Stretch of one caliper',
    kind: 'caliper-stretch',
    low: 0,
    high: 1e-12,
    example: '0.01 cm³/bar',
    spread: 'compliance',
  },
  runningClearance: {
    title: 'Gap between one pad and the rotor at rest',
    kind: 'clearance',
    low: 0,
    high: 0.002,
    example: '0.1 mm',
    spread: 'property',
  },
  mass: {
    title: 'Mass of one caliper without pads',
    kind: 'part-mass',
    low: 0.2,
    high: 25,
    example: '6 lb',
    spread: 'mass',
  },
} as const satisfies Facts;
