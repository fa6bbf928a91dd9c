import type { Facts } from './fact.ts';

/** One measured push: a force or a line pressure, and the travel. Their spread, where stated, is that of the gauge. */
export const pedalPointFacts = {
  force: {
    title: 'Pedal force of the push',
    kind: 'force',
    low: 1,
    high: 2000,
    example: '20 lbf',
    spread: 'chosen',
  },
  linePressure: {
    title: 'Front line pressure of the push',
    kind: 'line-pressure',
    low: 1e4,
    high: 3e7,
    example: '300 psi',
    spread: 'chosen',
  },
  travel: {
    title: 'Pedal travel of the push',
    kind: 'travel',
    low: 5e-4,
    high: 0.35,
    example: '1.1 in',
    spread: 'chosen',
  },
} as const satisfies Facts;
