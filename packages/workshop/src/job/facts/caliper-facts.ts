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

/** What carries the heat of the pads to the fluid and away; a schedule of stops needs it. */
export const caliperHeatFacts = {
  pistonConductance: {
    title: 'Along the piston, half of its length, over its area',
    kind: 'heat-transfer-coefficient',
    low: 0,
    high: 50000,
    example: '1200 W/(m²·K)',
    spread: 'property',
  },
  boreConductance: {
    title: 'From the pistons into the bore, over their area',
    kind: 'heat-transfer-coefficient',
    low: 0,
    high: 50000,
    example: '2000 W/(m²·K)',
    spread: 'property',
  },
  bodyConductance: {
    title: 'From the plate into the body past the pistons, over their area',
    kind: 'heat-transfer-coefficient',
    low: 0,
    high: 50000,
    example: '700 W/(m²·K)',
    spread: 'property',
  },
  bodySpecificHeat: {
    title: 'Specific heat of the body',
    kind: 'specific-heat',
    low: 300,
    high: 1500,
    example: '900 J/(kg·K)',
    spread: 'property',
  },
  fluidConductance: {
    title: 'From pistons and body into the fluid, over the area that it wets',
    kind: 'heat-transfer-coefficient',
    low: 10,
    high: 5000,
    example: '300 W/(m²·K)',
    spread: 'property',
  },
  fluidDepth: {
    title: 'Depth of the fluid behind the pistons',
    kind: 'part-length',
    low: 0.001,
    high: 0.05,
    example: '8 mm',
    spread: 'property',
  },
} as const satisfies Facts;
