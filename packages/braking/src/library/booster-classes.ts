import { inPractice } from './in-practice.ts';

/**
 * Boosters by kind: what to assume where nobody has measured the one in the car. The diaphragm of a vacuum booster and
 * the greatest assist of a hydraulic one stand for its size and are never assumed.
 *
 * Source: [common-practice], [qct-307]
 */
export const boosterClasses = {
  vacuum: {
    title: 'Vacuum booster',
    gain: inPractice(4.5, 0.8, 'Output over input until run-out; vacuum boosters run from 3 to 7.'),
    jumpInForce: inPractice(200, 80, 'Output as soon as the valve opens.'),
    vacuum: inPractice(
      67_000,
      4000,
      'About 20 inHg at sea level, engine idling and warm; boosters are tested at 66.7 kPa (QC/T 307, read).',
    ),
    efficiency: inPractice(0.95, 0.02, 'Diaphragm force that reaches the rod.'),
  },
  hydraulic: {
    title: 'Hydraulic booster',
    gain: inPractice(
      5,
      1,
      'Output over input until the assist is used up; hydraulic boosters run from 4 to 8.',
    ),
  },
} as const;
