import { inPractice } from './in-practice.ts';

/**
 * Brake lines: what to assume of steel tube.
 *
 * Source: [common-practice]
 */
export const tubeClass = {
  title: 'Steel line of 3/16 in',
  length: inPractice(1.8, 0.6, 'From the cylinder to one corner.'),
  innerDiameter: inPractice(0.00335, 0.0001, 'Wall of 0.7 mm.'),
  wallThickness: inPractice(0.0007, 0.00005, 'Usual wall.'),
  elasticModulus: inPractice(206e9, 4e9, 'Carbon steel, 200 to 210 GPa.'),
} as const;
