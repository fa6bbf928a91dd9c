/** g, m/s², the agreed standard value. */
export const standardGravity = 9.80665;
