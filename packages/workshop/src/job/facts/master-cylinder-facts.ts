import type { Facts } from './fact.ts';

export const masterCylinderFacts = {
  bore: {
    title: 'Master cylinder bore',
    kind: 'bore',
    low: 0.01,
    high: 0.05,
    example: '7/8 in',
    spread: 'size',
  },
  frontBore: {
    title: 'Front cylinder bore',
    kind: 'bore',
    low: 0.01,
    high: 0.05,
    example: '3/4 in',
    spread: 'size',
  },
  rearBore: {
    title: 'Rear cylinder bore',
    kind: 'bore',
    low: 0.01,
    high: 0.05,
    example: '3/4 in',
    spread: 'size',
  },
  frontForceShare: {
    title: 'Share of the rod force on the front cylinder',
    kind: 'share',
    low: 0.1,
    high: 0.9,
    example: '50 %',
    spread: 'share',
  },
  stroke: {
    title: 'Stroke of the cylinder',
    kind: 'travel',
    low: 0.01,
    high: 0.08,
    example: '1.4 in',
    spread: 'size',
  },
  efficiency: {
    title: 'Cylinder efficiency',
    kind: 'share',
    low: 0.5,
    high: 1,
    example: '0.95',
    spread: 'share',
  },
} as const satisfies Facts;
