import type { Facts } from './fact.ts';

/** What the road, the air and the car were like while a run was driven. None has a spread: they tell runs apart. */
export const runFacts = {
  headWind: {
    title: 'Head wind along the way of the run (a tail wind is negative)',
    kind: 'speed',
    low: -30,
    high: 30,
    example: '5 mph',
    spread: 'chosen',
  },
  grade: {
    title: 'Grade along the way of the run, uphill positive',
    kind: 'share',
    low: -0.3,
    high: 0.3,
    example: '1 %',
    spread: 'chosen',
  },
  surfaceTemperature: {
    title: 'Temperature of the road',
    kind: 'temperature',
    low: -50,
    high: 90,
    example: '90 °F',
    spread: 'chosen',
  },
  tireTemperature: {
    title: 'Temperature of the tires',
    kind: 'temperature',
    low: -50,
    high: 200,
    example: '110 °F',
    spread: 'chosen',
  },
  airTemperature: {
    title: 'Air temperature of the run',
    kind: 'temperature',
    low: -50,
    high: 60,
    example: '70 °F',
    spread: 'chosen',
  },
  startTemperature: {
    title: 'Rotor temperature at the start of the stops',
    kind: 'temperature',
    low: -50,
    high: 800,
    example: '180 °F',
    spread: 'chosen',
  },
} as const satisfies Facts;

export const judgementFacts = {
  at: {
    title: 'Moment inside the stop, on the time base of the log',
    kind: 'time',
    low: 0,
    high: 1e7,
    example: '103.2 s',
    spread: 'chosen',
  },
} as const satisfies Facts;
