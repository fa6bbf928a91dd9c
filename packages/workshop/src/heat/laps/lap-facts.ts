import type { Facts } from '../../job/facts/fact.ts';

/** What is told of one braking point of a lap. */
export const lapFacts = {
  from: {
    title: 'Speed before',
    kind: 'speed',
    low: 1,
    high: 120,
    example: '110 mph',
    required: true,
    spread: 'chosen',
  },
  to: {
    title: 'Speed after',
    kind: 'speed',
    low: 0,
    high: 119,
    example: '45 mph',
    required: true,
    spread: 'chosen',
  },
  next: {
    title: 'Time to the next braking point',
    kind: 'time',
    low: 1,
    high: 600,
    example: '22 s',
    required: true,
    spread: 'chosen',
  },
  deceleration: {
    title: 'Deceleration',
    kind: 'deceleration',
    low: 0.5,
    high: 15,
    example: '0.9 g',
    spread: 'chosen',
  },
} as const satisfies Facts;
