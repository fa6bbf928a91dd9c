import type { Facts } from './fact.ts';

export const pedalFacts = {
  ratio: {
    title: 'Pedal ratio',
    kind: 'ratio',
    low: 1,
    high: 12,
    example: '4.1',
    required: true,
    spread: 'size',
  },
  efficiency: {
    title: 'Pedal efficiency',
    kind: 'share',
    low: 0.5,
    high: 1,
    example: '0.95',
    spread: 'share',
  },
  freePlay: {
    title: 'Free play and dead stroke at the pedal',
    kind: 'travel',
    low: 0,
    high: 0.08,
    example: '0.3 in',
    spread: 'property',
  },
  flex: {
    title: 'Flex of pedal box and bulkhead at the pedal',
    kind: 'flex',
    low: 0,
    high: 1e-4,
    example: '5 mm/kN',
    spread: 'compliance',
  },
  availableTravel: {
    title: 'Pedal travel to the stop',
    kind: 'travel',
    low: 0.02,
    high: 0.35,
    example: '5.5 in',
    spread: 'size',
  },
} as const satisfies Facts;
