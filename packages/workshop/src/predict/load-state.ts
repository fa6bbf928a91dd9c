/** The two states of a car that its balance is looked at in: with the job's test mass, and with everything in it. */
export const loadStates = ['as-tested', 'laden'] as const;

export type LoadState = (typeof loadStates)[number];
