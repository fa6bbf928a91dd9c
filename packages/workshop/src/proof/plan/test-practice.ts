/** Numbers of a test that nobody states: common practice, none is measured. */

/** m/s at which the car is driven back: 40 mph. */
export const cruise = 40 * 0.44704;
/** s that turning round and coming back takes at least. */
export const turnAround = 60;
/** Stops that warm tires and brakes up, at least and at most. */
export const fewestWarmUps = 2;
export const mostWarmUps = 8;
/** s; beyond that a brake counts as one that does not cool to the window. */
export const longestInterval = 3600;
/** s between stops where no heat model says better, with what it may be. */
export const assumedInterval = { value: 180, low: 120, high: 300 } as const;
/** 1, scatter of single stops over their distance where nobody measured it. */
export const assumedScatter = 0.03;
/** m/s² of a stop where neither logs nor a job say how long it is. */
export const assumedDeceleration = 8;
/** m that a test should show where nobody says: 3 ft. */
export const usualResolution = 3 * 0.3048;
/** Counted runs with one set-up beyond which nobody drives on one day. */
export const mostRuns = 30;
/** °C, start temperatures between which regulations test: the hottest axle. */
export const usualWindow = { low: 65, high: 100 } as const;
