import type { Facts } from './fact.ts';

export const rearValveFacts = {
  kneePressure: {
    title: 'Knee pressure',
    kind: 'line-pressure',
    low: 1e5,
    high: 2e7,
    example: '400 psi',
    spread: 'property',
  },
  slope: {
    title: 'Slope above the knee',
    kind: 'ratio',
    low: 0,
    high: 1,
    example: '0.35',
    spread: 'share',
  },
} as const satisfies Facts;
