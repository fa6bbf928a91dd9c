import type { Facts } from './fact.ts';

/** What a test is wanted to show, and how hot the rotors may be when a stop starts. */
export const testFacts = {
  resolution: {
    title: 'Difference that the test should show',
    kind: 'stopping-distance',
    low: 0.05,
    high: 50,
    example: '3 ft',
    spread: 'chosen',
  },
  startTemperatureLow: {
    title: 'Coldest rotor at the start of a stop',
    kind: 'temperature',
    low: -50,
    high: 800,
    example: '150 °F',
    spread: 'chosen',
  },
  startTemperatureHigh: {
    title: 'Hottest rotor at the start of a stop',
    kind: 'temperature',
    low: -50,
    high: 800,
    example: '212 °F',
    spread: 'chosen',
  },
} as const satisfies Facts;
