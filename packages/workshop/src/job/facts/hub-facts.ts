import type { Facts } from './fact.ts';

/** What moves the rotors sideways and so knocks the pads back. */
export const hubFacts = {
  frontRunOut: {
    title: 'Run-out of the front rotors as mounted',
    kind: 'clearance',
    low: 0,
    high: 0.001,
    example: '0.05 mm',
    spread: 'property',
  },
  rearRunOut: {
    title: 'Run-out of the rear rotors as mounted',
    kind: 'clearance',
    low: 0,
    high: 0.001,
    example: '0.05 mm',
    spread: 'property',
  },
  frontBearingPlay: {
    title: 'Tilt of the front rotors at the pads within the bearing play',
    kind: 'clearance',
    low: 0,
    high: 0.001,
    example: '0.03 mm',
    spread: 'property',
  },
  rearBearingPlay: {
    title: 'Tilt of the rear rotors at the pads within the bearing play',
    kind: 'clearance',
    low: 0,
    high: 0.001,
    example: '0.03 mm',
    spread: 'property',
  },
  frontAxleFloat: {
    title: 'Float of the front rotors along their axle',
    kind: 'clearance',
    low: 0,
    high: 0.003,
    example: '0.1 mm',
    spread: 'property',
  },
  rearAxleFloat: {
    title: 'Float of the rear rotors along their axle',
    kind: 'clearance',
    low: 0,
    high: 0.003,
    example: '0.3 mm',
    spread: 'property',
  },
} as const satisfies Facts;
