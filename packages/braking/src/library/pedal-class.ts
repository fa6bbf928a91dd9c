import { inPractice } from './in-practice.ts';

/**
 * What to assume of a pedal whose ratio alone is known.
 *
 * Source: [common-practice]
 */
export const pedalClass = {
  title: 'Pedal',
  efficiency: inPractice(0.95, 0.02, 'Pivot and clevis in good order.'),
  freePlay: inPractice(0.006, 0.002, 'Free play and dead stroke together, at the pedal.'),
  flex: inPractice(2e-6, 1e-6, 'Pedal box and bulkhead, about 1 mm at 500 N.'),
  availableTravel: inPractice(0.13, 0.01, 'Pedal to floor or to the bottom of the cylinder.'),
} as const;
