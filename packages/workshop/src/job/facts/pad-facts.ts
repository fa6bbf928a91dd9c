import type { Fact, Facts } from './fact.ts';

export const padFacts = {
  area: {
    title: 'Friction face of one pad',
    kind: 'part-area',
    low: 5e-4,
    high: 0.03,
    example: '6.2 in²',
    required: true,
    spread: 'size',
  },
  radialHeight: {
    title: 'Radial height of the friction face',
    kind: 'part-length',
    low: 0.01,
    high: 0.15,
    example: '45 mm',
    required: true,
    spread: 'size',
  },
  thickness: {
    title: 'Friction material left',
    kind: 'part-length',
    low: 0.001,
    high: 0.03,
    example: '10 mm',
    spread: 'size',
  },
  compressibility: {
    title: 'Squeeze of one pad per face pressure',
    kind: 'pad-squeeze',
    low: 0,
    high: 1e-10,
    example: '1.5 µm/bar',
    spread: 'compliance',
  },
  mass: {
    title: 'Mass of one pad with its plate',
    kind: 'part-mass',
    low: 0.03,
    high: 5,
    example: '0.9 lb',
    spread: 'mass',
  },
  specificHeat: {
    title: 'Specific heat of the pad',
    kind: 'specific-heat',
    low: 300,
    high: 3000,
    example: '1000 J/(kg·K)',
    spread: 'property',
  },
  conductivity: {
    title: 'Conductivity of the pad',
    kind: 'conductivity',
    low: 0.1,
    high: 100,
    example: '2 W/(m·K)',
    spread: 'property',
  },
  density: {
    title: 'Density of the friction material',
    kind: 'density',
    low: 800,
    high: 8000,
    example: '2400 kg/m³',
    spread: 'property',
  },
} as const satisfies Facts;

/** How a pad takes up heat and hands it on; a schedule of stops needs it. */
export const padHeatFacts = {
  contactConductance: {
    title: 'Contact of the pressed pad and the rotor',
    kind: 'heat-transfer-coefficient',
    low: 100,
    high: 100_000,
    example: '10000 W/(m²·K)',
    spread: 'property',
  },
  plateConductance: {
    title: 'From the plate through shim and rim into the piston, over the area of the piston',
    kind: 'heat-transfer-coefficient',
    low: 0,
    high: 50000,
    example: '1500 W/(m²·K)',
    spread: 'property',
  },
} as const satisfies Facts;

/** One friction coefficient of a pad's table. */
export const padFrictionFact = {
  title: 'Pad friction',
  kind: 'ratio',
  low: 0.05,
  high: 1,
  example: '0.40',
  spread: 'friction',
} as const satisfies Fact;

export const padTemperatureFact = {
  title: 'Interface temperature',
  kind: 'temperature',
  low: -50,
  high: 1200,
  example: '400 °F',
  spread: 'chosen',
} as const satisfies Fact;
