import type { Reconciliation } from '../results/reconciliation.ts';

/** What is measured of a stop that the model has an answer to, in the order in which the model answers it. */
export const figures = [
  { quantity: 'stopping-distance', title: 'Stopping distance', unit: 'm' },
  { quantity: 'fully-developed-deceleration', title: 'Mean fully developed deceleration', unit: 'm/s²' },
  { quantity: 'build-up-time', title: 'Build-up time', unit: 's' },
  { quantity: 'deceleration-per-pressure', title: 'Deceleration per line pressure', unit: '(m/s²)/Pa' },
  { quantity: 'deceleration-per-pedal-force', title: 'Deceleration per pedal force', unit: '(m/s²)/N' },
] as const satisfies readonly {
  readonly quantity: Reconciliation['observations'][number]['quantity'];
  readonly title: string;
  readonly unit: string;
}[];

/** Place of each figure in an answer of the model. */
export const placeOf = { distance: 0, developed: 1, buildUp: 2, perPressure: 3, perForce: 4 } as const;
