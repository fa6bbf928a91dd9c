import type { Facts } from './fact.ts';

export const tubeFacts = {
  length: { title: 'Length', kind: 'car-length', low: 0, high: 8, example: '5 ft', spread: 'property' },
  innerDiameter: {
    title: 'Inner diameter',
    kind: 'part-length',
    low: 0.001,
    high: 0.01,
    example: '3.35 mm',
    spread: 'size',
  },
  wallThickness: {
    title: 'Wall thickness',
    kind: 'part-length',
    low: 0.0003,
    high: 0.003,
    example: '0.7 mm',
    spread: 'size',
  },
  elasticModulus: {
    title: "Young's modulus",
    kind: 'elastic-modulus',
    low: 1e9,
    high: 4e11,
    example: '206 GPa',
    spread: 'property',
  },
} as const satisfies Facts;
