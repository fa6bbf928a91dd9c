import type { Fact, Facts } from './fact.ts';

export const hoseFacts = {
  length: {
    title: 'Free length',
    kind: 'part-length',
    low: 0.05,
    high: 2.5,
    example: '14 in',
    spread: 'size',
  },
} as const satisfies Facts;

/** One growth of a hose's table. */
export const hoseExpansionFact = {
  title: 'Expansion',
  kind: 'hose-growth',
  low: 0,
  high: 2e-5,
  example: '0.3 cm³/ft',
  spread: 'compliance',
} as const satisfies Fact;

export const hosePressureFact = {
  title: 'Pressure of the expansion',
  kind: 'line-pressure',
  low: 1e5,
  high: 3e7,
  example: '1000 psi',
  spread: 'chosen',
} as const satisfies Fact;
