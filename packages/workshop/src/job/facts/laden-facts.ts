import type { Facts } from './fact.ts';

/** The same car with everybody and everything in it that it may carry. */
export const ladenFacts = {
  mass: {
    title: 'Laden mass',
    kind: 'car-mass',
    low: 150,
    high: 9000,
    example: '3300 lb',
    spread: 'mass',
  },
  frontLoadShare: {
    title: 'Front share of the static load, laden',
    kind: 'share',
    low: 0.15,
    high: 0.8,
    example: '48 %',
    spread: 'share',
  },
  centerOfGravityHeight: {
    title: 'Center of gravity height, laden',
    kind: 'car-length',
    low: 0.1,
    high: 1.8,
    example: '20 in',
    spread: 'property',
  },
} as const satisfies Facts;

/** What is put into a car whose laden state is not stated. */
export const loadFacts = {
  mass: {
    title: 'Passengers and luggage on top of the test mass',
    kind: 'car-mass',
    low: 0,
    high: 2000,
    example: '600 lb',
    spread: 'mass',
  },
  frontLoadShare: {
    title: 'Share of passengers and luggage that the front axle carries',
    kind: 'share',
    low: -0.3,
    high: 0.8,
    example: '25 %',
    spread: 'share',
  },
  centerOfGravityHeight: {
    title: 'Height of passengers and luggage above the road',
    kind: 'car-length',
    low: 0.2,
    high: 1.8,
    example: '28 in',
    spread: 'property',
  },
} as const satisfies Facts;

/** A drive that does something by itself. */
export const driveFacts = {
  share: {
    title: 'Greatest deceleration or push by the drive, over weight',
    kind: 'share',
    low: 0,
    high: 0.4,
    example: '10 %',
    required: true,
    spread: 'property',
  },
} as const satisfies Facts;
