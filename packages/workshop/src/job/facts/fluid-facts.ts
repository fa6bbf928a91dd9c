import type { Facts } from './fact.ts';

export const fluidFacts = {
  bulkModulus: {
    title: 'Bulk modulus',
    kind: 'elastic-modulus',
    low: 2e8,
    high: 5e9,
    example: '1.6 GPa',
    spread: 'property',
  },
  volume: {
    title: 'Fluid under pressure',
    kind: 'fluid-volume',
    low: 2e-5,
    high: 3e-3,
    example: '0.35 L',
    spread: 'property',
  },
  trappedAir: {
    title: 'Trapped air at atmospheric pressure',
    kind: 'fluid-volume',
    low: 0,
    high: 2e-4,
    example: '1 cm³',
    spread: 'property',
  },
  dryBoilingPoint: {
    title: 'Dry boiling point',
    kind: 'temperature',
    low: 150,
    high: 400,
    example: '446 °F',
    spread: 'temperature',
  },
  wetBoilingPoint: {
    title: 'Wet boiling point',
    kind: 'temperature',
    low: 100,
    high: 350,
    example: '311 °F',
    spread: 'temperature',
  },
} as const satisfies Facts;
