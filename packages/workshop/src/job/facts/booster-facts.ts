import type { Facts } from './fact.ts';

export const boosterFacts = {
  gain: { title: 'Booster gain', kind: 'ratio', low: 1, high: 15, example: '4.5', spread: 'property' },
  jumpInForce: {
    title: 'Jump-in output force',
    kind: 'force',
    low: 0,
    high: 2500,
    example: '90 lbf',
    spread: 'property',
  },
  diaphragmDiameter: {
    title: 'Effective diaphragm diameter',
    kind: 'part-length',
    low: 0.08,
    high: 0.4,
    example: '9 in',
    spread: 'size',
  },
  vacuum: {
    title: 'Vacuum available (at sea level; as read where measured)',
    kind: 'vacuum',
    low: 1e4,
    high: 1e5,
    example: '20 inHg',
    spread: 'property',
  },
  efficiency: {
    title: 'Booster efficiency',
    kind: 'share',
    low: 0.5,
    high: 1,
    example: '0.95',
    spread: 'share',
  },
  greatestAssist: {
    title: 'Greatest assist force',
    kind: 'force',
    low: 0,
    high: 20000,
    example: '1200 lbf',
    spread: 'property',
  },
} as const satisfies Facts;
