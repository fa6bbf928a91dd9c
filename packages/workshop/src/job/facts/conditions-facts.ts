import type { Facts } from './fact.ts';

/** The stop that is asked about: road, weather and foot. */
export const conditionsFacts = {
  surfaceFactor: {
    title: 'Surface friction factor',
    kind: 'ratio',
    low: 0.05,
    high: 1.5,
    example: '0.95',
    spread: 'friction',
  },
  waterDepth: {
    title: 'Depth of water on the road',
    kind: 'part-length',
    low: 0,
    high: 0.002,
    example: '0.5 mm',
    spread: 'property',
  },
  grade: { title: 'Grade', kind: 'share', low: -0.3, high: 0.3, example: '2 %', spread: 'chosen' },
  altitude: {
    title: 'Altitude',
    kind: 'stopping-distance',
    low: 0,
    high: 5000,
    example: '1200 ft',
    spread: 'chosen',
  },
  airTemperature: {
    title: 'Air temperature',
    kind: 'temperature',
    low: -50,
    high: 60,
    example: '70 °F',
    spread: 'chosen',
  },
  speed: {
    title: 'Speed to stop from',
    kind: 'speed',
    low: 1,
    high: 120,
    example: '60 mph',
    spread: 'chosen',
  },
  pedalForce: {
    title: 'Pedal force',
    kind: 'force',
    low: 10,
    high: 2000,
    example: '90 lbf',
    spread: 'chosen',
  },
  pedalRamp: {
    title: 'Time from touch to full pedal force',
    kind: 'time',
    low: 0,
    high: 3,
    example: '0.3 s',
    spread: 'chosen',
  },
  startTemperature: {
    title: 'Rotor temperature at the start',
    kind: 'temperature',
    low: -50,
    high: 800,
    example: '200 °F',
    spread: 'chosen',
  },
} as const satisfies Facts;

export const repeatedStopsFacts = {
  interval: {
    title: 'Time from one stop to the next',
    kind: 'time',
    low: 1,
    high: 3600,
    example: '45 s',
    spread: 'chosen',
  },
} as const satisfies Facts;
