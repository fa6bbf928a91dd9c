import { inPractice } from './in-practice.ts';

/**
 * Master cylinders by kind: what to assume where only the bore is known.
 *
 * Source: [common-practice]
 */
export const masterCylinderClasses = {
  tandem: {
    title: 'Tandem master cylinder',
    stroke: inPractice(0.034, 0.003, 'Both pistons together.'),
    efficiency: inPractice(0.95, 0.02, 'Seals in good order.'),
  },
  balanceBar: {
    title: 'Two cylinders with a balance bar',
    stroke: inPractice(0.034, 0.003, 'Of each cylinder.'),
    efficiency: inPractice(0.95, 0.02, 'Seals in good order.'),
    frontForceShare: inPractice(0.5, 0.01, 'Bar set in the middle.'),
  },
} as const;
