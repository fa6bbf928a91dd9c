import type { Facts } from './fact.ts';

export const antilockFacts = {
  efficiency: {
    title: 'Mean used over peak friction while it cycles',
    kind: 'share',
    low: 0.5,
    high: 1,
    example: '92 %',
    spread: 'share',
  },
  minimumSpeed: {
    title: 'Speed below which it is off',
    kind: 'speed',
    low: 0,
    high: 10,
    example: '4 mph',
    spread: 'property',
  },
} as const satisfies Facts;
