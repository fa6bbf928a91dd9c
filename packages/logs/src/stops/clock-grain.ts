/**
 * s; times are compared with so much room, so that a sample that lies exactly at a limit falls to the same side wherever
 * the clock began.
 */
export const clockGrain = 1e-6;
