/** Sizes under which nobody in the car would notice (assumed): m, N, m of pedal travel; m for one part's share. */
export const trifles = { distance: 0.3, force: 10, travel: 0.003, partDistance: 0.1 } as const;
